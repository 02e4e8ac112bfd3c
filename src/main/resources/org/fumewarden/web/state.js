// The task as a tree of words, the last advice, and who is told when one of them changes.

import { say } from './words.js';

const KEY = 'fumewarden.';
const listeners = {};

export const state = {
  task: { title: '', code: '', on: '' },
  advice: null,
  /** The last advice that came for this task: while a fault stands in it, what was asked stays where it was. */
  last: null,
  stale: false,
  raw: '',
  problems: [],
  pin: null,
  tried: null,
  vocabulary: null,
  codes: [],
  starts: [],
  today: '',
  matters: null,
  undo: null,
  busy: false,
};

export function on(name, listener) {
  (listeners[name] ??= []).push(listener);
}

export function emit(name) {
  for (const listener of listeners[name] ?? []) listener();
}

/** Reads what an earlier visit kept; an unreadable note counts as none. */
export function remembered(name) {
  try {
    return JSON.parse(localStorage.getItem(KEY + name));
  } catch {
    return null;
  }
}

export function remember(name, value) {
  try {
    if (value === undefined || value === null) localStorage.removeItem(KEY + name);
    else localStorage.setItem(KEY + name, JSON.stringify(value));
  } catch {
    // A full or forbidden store: the page still works, it only forgets on closing.
  }
}

/** A step of a path; in a list of exposures the id of an agent stands for its entry. */
function key(node, step) {
  if (!Array.isArray(node) || /^\d+$/.test(step)) return step;
  const index = node.findIndex(entry => entry?.agent === step);
  return index < 0 ? step : index;
}

/** The value at a path such as wearer.facial-hair, or undefined. */
export function at(tree, path) {
  return path.split('.').reduce((node, step) => (node === null || node === undefined ? undefined : node[key(node, step)]), tree);
}

/** Puts a value at a path, in place; undefined takes it away. */
export function put(tree, path, value) {
  const steps = path.split('.');
  const last = steps.pop();
  let node = tree;
  for (const step of steps) {
    const own = key(node, step);
    if (typeof node[own] !== 'object' || node[own] === null) node[own] = {};
    node = node[own];
  }
  if (value === undefined) delete node[key(node, last)];
  else node[key(node, last)] = value;
}

export function change(path, value) {
  changeAll([[path, value]]);
}

/** Several answers at once, as one change. */
export function changeAll(pairs) {
  for (const [path, value] of pairs) put(state.task, path, value);
  state.stale = true;
  emit('changed');
  emit('task');
}

/** Another task takes the place of this one; what it replaces can be had back. */
export function replaceTask(task, undo) {
  state.undo = undo ?? null;
  state.task = task;
  state.stale = true;
  state.matters = null;
  state.last = null;
  emit('changed');
  emit('replaced');
  emit('task');
}

export function question(id) {
  return state.vocabulary.questions.find(q => q.id === id);
}

/** The language of the name of an agent: that of the page once it is translated, else that of the rule base. */
export function nameLanguage(id) {
  return state.vocabulary.translated.includes(id) ? undefined : 'en';
}

export function name(id) {
  return state.vocabulary.names[id] ?? id.replaceAll('-', ' ');
}

/** An answer in words. */
export function answerWords(asked, value) {
  if (value === undefined) return '';
  const plain = { true: 'ui.yes', false: 'ui.no', unknown: 'ui.unknown' }[value];
  return asked.choices.find(c => c.id === value)?.name ?? (plain ? say(plain) : value);
}

/** An open question in words; of a level that is missing, which one. */
export function askWords(open) {
  const [kind, agent, time] = open.question.split('.');
  return kind === 'exposures' && time ? `${name(agent)}, ${say(`averaging.${time}`)}` : open.ask;
}
