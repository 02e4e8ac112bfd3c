// Hold one advice, change anything, and see both and only what moved.

import { askJson, Problems } from './server.js';
import { at, put, remember, replaceTask, state } from './state.js';
import { el, ruleWords } from './dom.js';
import { say } from './words.js';
import { field } from './field.js';
import { brief, plate } from './plate.js';
import { unverified } from './advice.js';
import { slider } from './slider.js';

let changed = null;
let fields = [];
let both = null;
let timer = 0;

function pinned() {
  return state.pin ?? (state.advice && { task: structuredClone(state.task) });
}

function side(reasons, sign, words) {
  return reasons.map(r => el('li', {}, el('b', {}, `${sign} ${words} `), ruleWords('span', r.says),
    el('span', { className: 'cite' }, ` ${r.rule} \u00B7 ${r.source}, ${r.clause}`), unverified(r.unverified)));
}

function difference(d) {
  return el('li', { className: 'moved' }, el('h4', { lang: 'en' }, d.what),
    el('div', { className: 'fromto' },
      el('p', {}, el('span', { className: 'tag' }, say('ui.was')), ' ', ruleWords('span', d.before)),
      el('p', {}, el('span', { className: 'tag' }, say('ui.is')), ' ', ruleWords('span', d.after))),
    (d.ceased.length + d.began.length > 0) && el('details', {}, el('summary', {}, say('ui.because', d.ceased.length + d.began.length)),
      el('ul', { className: 'plain' }, side(d.ceased, '\u2212', say('ui.ceased')), side(d.began, '+', say('ui.began')))));
}

async function compare() {
  const pin = pinned();
  if (!pin || !changed) return;
  try {
    const told = await askJson('api/compare', { before: pin.task, after: changed });
    for (const f of fields) f.setFault(null);
    both.replaceChildren(
      el('div', { className: 'pair' }, plate(told.before, say('ui.pinned'), true), plate(told.after, say('ui.changed'), true)),
      el('h3', {}, say('ui.moved', told.differences.length)),
      told.differences.length === 0 ? el('p', {}, say('ui.moved.none')) : el('ul', { className: 'plain' }, told.differences.map(difference)));
  } catch (fault) {
    if (!(fault instanceof Problems)) return;
    for (const f of fields) f.setFault(fault.problems.find(p => p.field === f.question.path));
    both.replaceChildren(...fault.problems.map(p => el('p', { className: 'fault' }, `${p.field} ${p.message} ${say('ui.maybe', p.maybe)}`)));
  }
}

function soon() {
  clearTimeout(timer);
  timer = setTimeout(compare, 300);
}

function codeRow() {
  return el('div', { className: 'row' }, el('label', { className: 'ask', htmlFor: 'other-code' }, say('ui.code')),
    el('div', { className: 'answer' }, el('select', { id: 'other-code', onchange: e => { changed.code = e.target.value; soon(); } },
      state.codes.map(c => el('option', { value: c.id, selected: c.id === changed.code, lang: 'en' }, `${c.id}: ${c.name}`)))));
}

function exposureQuestions() {
  const list = Array.isArray(changed.exposures) ? changed.exposures : [];
  return list.flatMap((e, i) => ['twa', 'stel', 'ceiling'].filter(t => e[t] !== undefined).map(t => ({
    id: `exposures.${i}.${t}`, path: `exposures.${i}.${t}`, kind: 'level', choices: [], translated: false,
    ask: `${state.vocabulary.names[e.agent] ?? e.agent}, ${say(`averaging.${t}`)}`,
    units: [{ unit: 'mg/m3', factor: '1', kind: 'm' }, { unit: 'ug/m3', factor: '0.001', kind: 'm' }, { unit: 'ppm', factor: '1', kind: 'v' }, { unit: 'ppb', factor: '0.001', kind: 'v' }],
  })));
}

/** Draws the page for the task as it stands. */
export function drawWhatIf(root, tried) {
  fields = [];
  const pin = pinned();
  if (!pin) {
    root.replaceChildren(el('p', {}, say('ui.advice.none')));
    return;
  }
  changed = structuredClone(tried && typeof tried === 'object' ? tried : state.task);
  both = el('div', { className: 'both', 'aria-live': 'polite' });
  const rows = el('div', {}, codeRow());
  const offered = [...exposureQuestions(), ...state.vocabulary.questions];
  const choose = el('select', { id: 'what' }, offered.map(q => el('option', { value: q.id, lang: q.translated ? undefined : 'en' }, q.ask)));
  const add = () => {
    const question = offered.find(q => q.id === choose.value);
    let f = fields.find(each => each.question.id === question.id);
    if (!f) {
      f = field(question, at(changed, question.path), value => { put(changed, question.path, value); soon(); });
      fields.push(f);
      rows.append(f.node);
    }
    f.node.querySelector('input, select')?.focus();
  };
  root.replaceChildren(
    el('p', { className: 'hint' }, say('ui.whatif.hint')),
    el('p', { className: 'tools' },
      el('button', { type: 'button', onclick: () => hold(root) }, say('ui.pin')),
      state.pin && el('button', { type: 'button', onclick: () => release(root) }, say('ui.unpin')),
      el('button', { type: 'button', onclick: () => replaceTask(structuredClone(changed)) }, say('ui.adopt'))),
    variants(root),
    el('fieldset', { className: 'group' }, el('legend', {}, say('ui.changes')), rows,
      el('div', { className: 'choices' }, el('label', { htmlFor: 'what' }, say('ui.what')), choose, el('button', { type: 'button', onclick: add }, say('ui.change')))),
    both,
    el('section', {}, el('h3', {}, say('ui.slider')), slider()));
  if (state.advice) both.replaceChildren(plate(brief(state.advice), say('ui.pinned'), true));
  compare();
}

/** The variants that the task file keeps, each a button that tries it. */
function variants(root) {
  const box = el('div', {});
  if (!state.task.variants) return box;
  askJson('api/variants', { task: state.task }, true).then(told => box.replaceChildren(el('p', { className: 'choices' }, el('span', {}, say('ui.variants')),
    told.variants.map(v => el('button', { type: 'button', className: 'quiet', onclick: () => {
      drawWhatIf(root, v.task);
      root.querySelector('.both').scrollIntoView({ block: 'nearest' });
    } }, v.name, el('span', { className: 'cite' }, ` ${Object.entries(v.changes).map(c => c.join(' = ')).join(', ')}`))))), () => { /* the notice line says what happened */ });
  return box;
}

function hold(root) {
  state.pin = { task: structuredClone(changed) };
  remember('pin', state.pin);
  drawWhatIf(root);
}

function release(root) {
  state.pin = null;
  remember('pin', null);
  drawWhatIf(root);
}
