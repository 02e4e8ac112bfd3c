// One advice is kept for comparison; a change is tried, and both stand side by side with what moved. Changes stay until taken back.

import { askJson, Problems } from './server.js';
import { answerWords, at, put, remember, state } from './state.js';
import { el, fresh } from './dom.js';
import { has, say } from './words.js';
import { field } from './field.js';
import { plate } from './plate.js';
import { movedLines } from './moved.js';
import { changeable, levers } from './levers.js';
import { faultWords } from './faults.js';
import { range } from './range.js';
import { adoptTask, taskId } from './tasks.js';

/** Lines of what changes that are shown at once. */
const FIRST = 4;
let fields = [];
let both = null;
let timer = 0;

/** The changes tried for the task of this tab; another task has none. */
function tries() {
  if (state.tried?.id !== taskId()) state.tried = { id: taskId(), changes: {} };
  return state.tried.changes;
}

function changed() {
  const task = structuredClone(state.task);
  for (const [path, value] of Object.entries(tries())) put(task, path, value === null ? undefined : value);
  return task;
}

function tryOut(path, value) {
  tries()[path] = value ?? null;
}

function nameOf(task) {
  return task.title || say('ui.title.none');
}

/** True when what is kept comes from another task than the one described. */
function foreign() {
  return state.pin && state.pin.id !== taskId() && state.pin.allowed !== taskId();
}

/** What was changed, for paper: there the controls are left out. */
function triedWords() {
  const offered = changeable(state.task);
  const words = Object.entries(tries()).map(([path, value]) => {
    const asked = offered.find(q => q.path === path);
    return `${asked?.ask ?? path} ${asked ? answerWords(asked, value ?? '') : value}`;
  });
  return words.length === 0 ? '' : el('p', { className: 'print-only' }, el('b', {}, `${say('ui.changed')}: `), words.join('; '));
}

async function compare() {
  const out = both;
  const kept = state.pin?.task ?? state.task;
  try {
    const told = await askJson('api/compare', { before: kept, after: changed(), language: document.documentElement.lang });
    if (out !== both) return;
    for (const f of fields) f.setFault(null);
    const lines = movedLines(told.differences, told.language);
    out.replaceChildren(
      el('div', { className: 'pair' }, plate(told.before, say(state.pin ? 'ui.kept' : 'ui.described', nameOf(kept)), true), plate(told.after, say('ui.changed'), true)),
      triedWords(),
      el('h3', {}, say('ui.moved', lines.length)),
      ...(lines.length === 0 ? [el('p', {}, say(Object.keys(tries()).length ? 'ui.moved.none' : 'ui.moved.yet'))] : [ el('ul', { className: 'plain moves' }, lines.slice(0, FIRST)),
      lines.length > FIRST && el('details', { className: 'more' }, el('summary', {}, `${say('ui.more')} (${lines.length - FIRST})`), el('ul', { className: 'plain moves' }, lines.slice(FIRST)))].filter(Boolean)));
  } catch (fault) {
    if (!(fault instanceof Problems) || out !== both) return;
    for (const f of fields) f.setFault(fault.problems.find(p => p.field === f.question.path));
    out.replaceChildren(...fault.problems.map(p => el('p', { className: 'fault' }, faultWords(p))));
  }
}

function soon() {
  clearTimeout(timer);
  timer = setTimeout(() => compare(), 250);
}

function codeRow() {
  const id = fresh('code');
  return el('div', { className: 'row' }, el('label', { className: 'ask', htmlFor: id }, say('ui.code')),
    el('div', { className: 'answer' }, el('select', { id, className: 'other-code', onchange: e => { tryOut('code', e.target.value); soon(); } },
      state.codes.map(c => el('option', { value: c.id, selected: c.id === (tries().code ?? state.task.code) }, has(`code.${c.id}`) ? say(`code.${c.id}`) : c.name)))));
}

function changeRow(root, asked) {
  const f = field(asked, at(changed(), asked.path), value => { tryOut(asked.path, value); soon(); });
  fields.push(f);
  const row = el('div', { className: 'tried' }, f.node, el('button', { type: 'button', className: 'quiet', 'aria-label': `${say('ui.untry')}: ${asked.ask}`, onclick: () => {
    delete tries()[asked.path];
    drawWhatIf(root);
  } }, say('ui.untry')));
  return row;
}

function changes(root) {
  const offered = changeable(state.task);
  const rows = el('div', {}, offered.filter(q => q.path in tries()).map(q => changeRow(root, q)));
  const choose = el('select', { id: 'what' }, offered.map(q => el('option', { value: q.id, lang: q.translated ? undefined : 'en' }, q.ask)));
  const add = () => {
    const asked = offered.find(q => q.id === choose.value);
    const there = fields.find(f => f.question.path === asked.path);
    if (!there) rows.append(changeRow(root, asked));
    (there ?? fields[fields.length - 1]).focus();
  };
  return el('section', {}, el('h3', {}, say('ui.changes')), rows,
    el('div', { className: 'choices' }, el('label', { htmlFor: 'what' }, say('ui.what')), choose, el('button', { type: 'button', onclick: add }, say('ui.change'))),
    el('details', { className: 'more' }, el('summary', {}, say('ui.whatif.code')), codeRow()));
}

/** The variants that the task file keeps, each a button that tries it. */
function variants(root) {
  const box = el('div', {});
  if (!state.task.variants) return box;
  askJson('api/variants', { task: state.task }, true).then(told => box.replaceChildren(el('p', { className: 'choices' }, el('span', {}, say('ui.variants')),
    told.variants.map(v => el('button', { type: 'button', className: 'quiet', onclick: () => {
      state.tried = { id: taskId(), changes: { ...v.changes } };
      drawWhatIf(root);
    } }, v.name)))), () => { /* the notice line says what happened */ });
  return box;
}

function keepThis(root) {
  state.pin = { id: taskId(), task: changed() };
  remember('pin', state.pin);
  drawWhatIf(root);
}

function letGo(root) {
  state.pin = null;
  remember('pin', null);
  drawWhatIf(root);
}

function tools(root) {
  const tried = Object.keys(tries()).length > 0;
  return el('p', { className: 'tools no-print' },
    el('button', { type: 'button', className: 'quiet', onclick: () => keepThis(root) }, say('ui.keep')),
    state.pin && el('button', { type: 'button', className: 'quiet', onclick: () => letGo(root) }, say('ui.letgo')),
    tried && el('button', { type: 'button', className: 'quiet', onclick: () => { state.tried = null; drawWhatIf(root); } }, say('ui.untry.all')),
    tried && el('button', { type: 'button', className: 'quiet', onclick: () => { const task = changed(); state.tried = null; adoptTask(task, say('ui.undo.adopted')); } }, say('ui.adopt')));
}

/** Draws the place for the task as it stands. */
export function drawWhatIf(root) {
  fields = [];
  if (!state.advice && !state.pin) {
    root.replaceChildren(el('p', {}, say(state.problems.length ? 'ui.advice.wrong' : 'ui.deciding.first')));
    return;
  }
  both = el('div', { className: 'both' }, say('ui.working'));
  if (foreign()) {
    root.replaceChildren(el('div', { className: 'boxed', role: 'alert' }, el('p', {}, say('ui.kept.other', nameOf(state.pin.task), nameOf(state.task))),
      el('p', { className: 'tools' }, el('button', { type: 'button', onclick: () => letGo(root) }, say('ui.kept.letgo', nameOf(state.task))),
        el('button', { type: 'button', className: 'quiet', onclick: () => { state.pin.allowed = taskId(); remember('pin', state.pin); drawWhatIf(root); } }, say('ui.kept.allow')))));
    return;
  }
  const tried = (path, value) => { tryOut(path, value); drawWhatIf(root); both.scrollIntoView({ block: 'nearest' }); };
  root.replaceChildren(tools(root), el('div', { className: 'bench' },
    el('div', { className: 'controls no-print' }, variants(root), changes(root), levers(state.task, tried)), both),
    range());
  compare();
}
