// Several tasks kept in this browser by name. Two tabs never overwrite each other: the later one keeps a copy of its own.

import { tell } from './server.js';
import { el, fileName, fresh, keep } from './dom.js';
import { emit, on, remember, remembered, replaceTask, state } from './state.js';
import { say } from './words.js';

const PREFIX = 'fumewarden.task.';
let current = '';
let revision = 0;

function kept(id) {
  const entry = remembered(`task.${id}`);
  return entry && typeof entry === 'object' && entry.task && typeof entry.task === 'object' && !Array.isArray(entry.task) ? entry : null;
}

/** A task that holds nothing but its head needs no place in the list. */
function holdsAnswers(task) {
  return Object.keys(task).some(key => !['title', 'code', 'on'].includes(key));
}

/** Every task that is kept, the latest first. */
export function keptTasks() {
  const all = [];
  for (let i = 0; i < localStorage.length; i++) {
    const key = localStorage.key(i);
    const entry = key.startsWith(PREFIX) && kept(key.slice(PREFIX.length));
    if (entry) all.push({ id: key.slice(PREFIX.length), ...entry });
  }
  return all.sort((a, b) => b.at - a.at);
}

function stay(id, known) {
  current = id;
  revision = known;
  sessionStorage.setItem('fumewarden.here', id);
  remember('last', id);
}

/** Writes the task; when another tab wrote it meanwhile, this tab goes on with a copy. */
function save() {
  const stored = kept(current);
  if (stored && stored.revision !== revision) {
    stay(crypto.randomUUID(), 0);
    tell(say('ui.tasks.forked'), true);
  }
  if (!stored && !holdsAnswers(state.task) && !state.task.title) return;
  revision += 1;
  remember(`task.${current}`, { task: state.task, at: Date.now(), revision });
}

function forgetEmpty() {
  const entry = kept(current);
  if (entry && !holdsAnswers(entry.task)) remember(`task.${current}`, null);
}

/** An empty task under the code that was used last. */
export function emptyTask() {
  return { title: '', code: remembered('code') ?? state.starts[0]?.task.code ?? state.codes[0]?.id, on: state.today };
}

/** The task of this tab, the one left last, or an empty one. */
export function firstTask() {
  const old = remembered('task');
  if (old && typeof old === 'object' && !Array.isArray(old)) {
    remember(`task.${crypto.randomUUID()}`, { task: old, at: Date.now(), revision: 1 });
    remember('task', null);
  }
  for (const id of [sessionStorage.getItem('fumewarden.here'), remembered('last'), keptTasks()[0]?.id]) {
    const entry = typeof id === 'string' && kept(id);
    if (entry) {
      stay(id, entry.revision);
      return entry.task;
    }
  }
  stay(crypto.randomUUID(), 0);
  return emptyTask();
}

function goTo(id, task, known, undo) {
  forgetEmpty();
  stay(id, known);
  replaceTask(task, undo);
}

/** Begins another task; the one before stays in the list and comes back on one press. */
export function beginTask(task, words) {
  const [before, was, known] = [current, structuredClone(state.task), revision];
  goTo(crypto.randomUUID(), task, 0, { words, run: () => goTo(before, was, kept(before)?.revision ?? known) });
}

/** Puts changes in place of the task; what stood there comes back on one press. */
export function adoptTask(task, words) {
  const was = structuredClone(state.task);
  replaceTask(task, { words, run: () => replaceTask(was) });
}

function openKept(id) {
  const entry = kept(id);
  if (entry) beginAt(id, entry);
}

function beginAt(id, entry) {
  const [before, was] = [current, structuredClone(state.task)];
  goTo(id, entry.task, entry.revision, { words: say('ui.undo.opened', entry.task.title || say('ui.title.none')), run: () => goTo(before, was, kept(before)?.revision ?? 0) });
}

function drop(entry) {
  remember(`task.${entry.id}`, null);
  if (entry.id === current) stay(crypto.randomUUID(), 0);
  state.undo = { words: say('ui.undo.dropped', entry.task.title || say('ui.title.none')), run: () => { remember(`task.${entry.id}`, { task: entry.task, at: entry.at, revision: entry.revision }); emit('tasks'); } };
  emit('undo');
  emit('tasks');
}

/** The list of what is kept, to open, take away and export. */
export function tasksBox() {
  const box = el('div', { className: 'kept' });
  const draw = () => {
    const all = keptTasks();
    box.replaceChildren(...[all.length === 0 ? el('p', { className: 'hint' }, say('ui.tasks.none')) : el('ul', { className: 'plain' }, all.map(entry => {
      const name = entry.task.title || say('ui.title.none');
      return el('li', { className: 'choices' },
        el('button', { type: 'button', className: 'quiet', 'aria-current': entry.id === current ? 'true' : undefined, onclick: () => openKept(entry.id) }, name,
          el('span', { className: 'cite' }, ` ${entry.task.code ?? ''} ${new Date(entry.at).toLocaleString(document.documentElement.lang)}`)),
        el('button', { type: 'button', className: 'quiet', 'aria-label': say('ui.tasks.drop', name), onclick: () => drop(entry) }, '\u2715'));
    })), all.length > 0 && el('p', {}, el('button', { type: 'button', className: 'quiet', onclick: () => keep('fumewarden-tasks.json',
      JSON.stringify({ tasks: all.map(e => e.task) }, null, 2), 'application/json') }, say('ui.tasks.export')))].filter(Boolean));
  };
  draw();
  const id = fresh('kept');
  const node = el('details', { className: 'more', id }, el('summary', {}, say('ui.tasks')), box);
  on('tasks', draw);
  node.addEventListener('toggle', draw);
  return node;
}

/** Keeps an exported list: every task in it becomes one of the list. */
export function takeTasks(list) {
  list.forEach((task, i) => remember(`task.${crypto.randomUUID()}`, { task, at: Date.now() - i, revision: 1 }));
  emit('tasks');
}

/** Tells the task of this tab from every other. */
export function taskId() {
  return current;
}

/** The name of a file of this task. */
export function taskFile(ending) {
  return fileName(state.task.title ?? '', ending);
}

/** From now on each change is kept, and another tab that changes the same task is told. */
export function keepTasks() {
  on('changed', () => { remember('code', state.task.code); save(); });
  window.addEventListener('storage', event => {
    if (event.key === PREFIX + current && event.newValue) tell(say('ui.tasks.elsewhere'), true);
    emit('tasks');
  });
}
