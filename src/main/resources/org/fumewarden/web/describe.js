// The task, led step by step: only the questions that matter for what was answered so far, each with "unknown".

import { at, change, name, state } from './state.js';
import { el } from './dom.js';
import { has, say } from './words.js';
import { field, spelled } from './field.js';
import { exposures } from './exposures.js';
import { summary } from './faults.js';
import { begin } from './begin.js';
import { head } from './head.js';
import { after, asked, before, begun, extras, groupsOf, isOpen, left, stepOf, steps } from './steps.js';
import { titleOf } from './title.js';
import { together } from './together.js';

let root = null;
let step = 'task';
let fields = [];
let measured = null;
let parts = {};
let drawn = '';
let counts = {};

const stepName = id => (id === 'last' ? say('ui.step.last') : has(`group.${id}`) ? say(`group.${id}`) : id);

/** The first list without an answer lies open; the others open when they are come to. */
let openFirst = true;

function row(question) {
  const value = at(state.task, question.path);
  const made = field(question, value, given => answer(question, given), openFirst && value === undefined);
  openFirst &&= value !== undefined || !made.long;
  fields.push(made);
  return made.node;
}

async function answer(question, value) {
  change(question.path, value);
  titleOf();
  if (value !== undefined) fields.find(f => f.question === question)?.setReasons([]);
  drawTogether();
  if (value !== undefined) fields.find(f => f.long && at(state.task, f.question.path) === undefined)?.unfold();
  if (value === undefined || question.choices.some(c => c.id === value) || question.choices.length === 0) return;
  const said = await spelled(state.task).catch(() => null);
  const word = said && at(said, question.path);
  if (word && word !== value && at(state.task, question.path) === value) {
    change(question.path, word);
    draw(false);
  }
}

function body() {
  if (step === 'exposures') {
    measured = exposures(list => change('exposures', list), onward);
    return [measured.node];
  }
  parts.together = el('div', {});
  drawTogether();
  return [parts.together, ...rows()];
}

/** Plain answers that are left to give in this step, above its questions. */
function drawTogether() {
  const box = begun() ? together(groupsOf(step).flatMap(asked), onward, () => draw(false)) : null;
  parts.together?.replaceChildren(...[box].filter(Boolean));
}

/** To the next step with an open question, after several answers on one press. */
function onward() {
  drawn = '';
  const next = after(step);
  go(step !== next && next && left(next) > 0 ? next : steps().find(s => s !== step && left(s) > 0) ?? step);
}

function rows() {
  return groupsOf(step).flatMap(group => {
    const { would, others } = step === 'last' ? { would: asked(group).concat(extras(group).would), others: extras(group).others } : extras(group);
    const main = step === 'last' ? [] : asked(group);
    const name = step === 'last' ? stepName(group) : say('ui.more');
    const rest = [...would, ...others];
    return [main.length > 0 && el('div', { 'data-group': group }, main.map(row)),
      step !== 'last' && main.length === 0 && el('p', { className: 'hint' }, say('ui.step.nothing')),
      rest.length > 0 && more(name, would, others)];
  });
}

/** Extras are made when they are first looked at. */
function more(name, would, others) {
  const box = el('details', { className: 'more' }, el('summary', {}, `${name} (${would.length + others.length})`));
  box.addEventListener('toggle', () => {
    if (!box.open || box.childElementCount > 1) return;
    box.append(el('div', {}, would.map(row)), ...(others.length ? [el('p', { className: 'hint' }, say('ui.more.others')), el('div', {}, others.map(row))] : []));
    place();
  });
  return box;
}

function chips() {
  return el('nav', { 'aria-label': say('ui.steps'), className: 'steps' }, el('ol', {}, steps().map(id => {
    const open = count(id);
    return el('li', {}, el('button', { type: 'button', 'aria-current': id === step ? 'step' : undefined, onclick: () => go(id) }, stepName(id),
      open > 0 && begun() ? el('span', { className: 'count' }, ` ${say('ui.left', open)}`) : ''));
  })));
}

/** How many questions of a step are open, as it stood when the advice was last worked out. */
function count(id) {
  if (!state.stale || !(id in counts)) counts[id] = left(id);
  return counts[id];
}

function go(id) {
  step = id;
  draw(true);
}

/** Draws the step anew; the focus goes with the reader when the step is another one. */
function draw(focus) {
  fields = [];
  measured = null;
  drawn = JSON.stringify([step, groupsOf(step).flatMap(g => asked(g).map(q => q.id))]);
  const title = el('h3', { tabIndex: -1, id: 'step' }, stepName(step));
  parts.left = el('p', { className: 'hint' });
  parts.chips = el('div', {}, chips());
  openFirst = true;
  parts.step.replaceChildren(parts.chips, title, parts.left, el('div', { className: 'asking' }, body()));
  place();
  if (focus) {
    title.focus({ preventScroll: true });
    parts.step.scrollIntoView({ block: 'nearest' });
  }
}

function bar() {
  const all = steps();
  parts.back.disabled = before(step) === undefined;
  parts.forward.disabled = after(step) === undefined;
  const open = all.reduce((sum, s) => sum + count(s), 0);
  parts.left.textContent = `${say('ui.step.of', all.indexOf(step) + 1, all.length)} ${begun() ? say('ui.left', open) : say('ui.left.here', left(step))}`;
  parts.head.remark();
}

/** Builds the place anew: at the start, and when another task, code or language comes. */
export function drawDescribe(into) {
  root = into;
  step = 'task';
  counts = {};
  parts = { faults: el('div', { className: 'faults', id: 'faults', role: 'alert' }), step: el('div', {}), head: head() };
  parts.back = el('button', { type: 'button', onclick: () => go(before(step)) }, say('ui.step.back'));
  parts.forward = el('button', { type: 'button', onclick: () => go(after(step)) }, say('ui.step.forward'));
  const get = el('a', { className: 'press', href: '#advice' }, say('ui.get'));
  root.replaceChildren(begin(), parts.head.node, parts.faults, parts.step, el('div', { className: 'bar', role: 'group', 'aria-label': say('ui.step.move') }, parts.back, parts.forward, get));
  draw(false);
}

/** A link to the field of a fault, through the step it stands in. */
function goTo(path) {
  const wanted = stepOf(path);
  if (wanted && wanted !== step) { step = wanted; draw(false); }
  const find = () => document.querySelector(`#describe [data-path="${CSS.escape(path)}"]`) ?? document.querySelector(`#describe [data-path="${CSS.escape(path.split('.').slice(0, 3).join('.'))}"]`)
    ?? document.querySelector(`#describe [data-path="${CSS.escape(path.split('.').slice(0, 2).join('.'))}"]`);
  for (const box of document.querySelectorAll('#describe .asking details.more')) {
    if (!find()) box.open = true;
  }
  setTimeout(() => {
    const found = find();
    found?.closest('details')?.setAttribute('open', '');
    found?.querySelector('input, select, textarea, button')?.focus();
  }, 30);
}

function label(path) {
  const question = state.vocabulary.questions.find(q => q.path === path);
  if (question) return question.ask;
  if (path.startsWith('exposures')) {
    const [, index, time] = path.split('.');
    const agent = Array.isArray(state.task.exposures) && state.task.exposures[index]?.agent;
    return agent ? `${name(String(agent))}${has(`averaging.${time}`) ? `, ${say(`averaging.${time}`)}` : ''}` : say('group.exposures');
  }
  return { title: say('ui.title'), on: say('ui.on'), code: say('ui.code') }[path] ?? path;
}

/** Puts faults and reasons beside the fields, and leaves what is being typed alone. */
function place() {
  const problems = state.problems;
  for (const f of fields) f.setFault(problems.find(p => p.field === f.question.path));
  parts.head.setFaults(problems);
  measured?.setFaults(problems);
  parts.faults.replaceChildren(...summary(problems.map(problem => ({ problem, label: label(problem.field), go: stepOf(problem.field) || ['title', 'on', 'code'].includes(problem.field) ? () => goTo(problem.field) : null }))));
  const open = new Map((begun() ? state.advice?.questions ?? [] : []).map(q => [q.question, q.reasons]));
  for (const f of fields) f.setReasons(isOpen(f.question) ? open.get(f.question.id) ?? [] : []);
  bar();
}

/** After a decision: more or fewer questions, without taking the focus from whoever types. */
export function refresh() {
  if (!root) return;
  const now = JSON.stringify([step, groupsOf(step).flatMap(g => asked(g).map(q => q.id))]);
  if (now !== drawn && step !== 'exposures') {
    const path = document.activeElement?.closest('#describe [data-path]')?.dataset.path;
    const typing = path && document.activeElement.matches('input[type=text], input[type=search]');
    const opened = [...root.querySelectorAll('.asking details.more')].some(d => d.open);
    if (!typing && !opened) {
      draw(false);
      if (path) fields.find(f => f.question.path === path)?.focus();
      return;
    }
  }
  parts.chips.replaceChildren(chips());
  measured?.suggest();
  place();
}
