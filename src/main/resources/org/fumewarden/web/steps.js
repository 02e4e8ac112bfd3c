// The steps of the description: one for each group of questions, with what is asked in it and what waits behind "more".

import { at, state } from './state.js';

const FIRST = ['process', 'base-metal', 'coating', 'place', 'extraction'];
/** Groups that are asked about only when somebody wants to. */
const LAST = ['upkeep', 'estimate', 'unit'];
const ORDER = ['task', 'atmosphere', 'exposures', 'wearer', 'kit'];
const TIMES = ['twa', 'stel', 'ceiling'];

function open() {
  return new Set((state.advice?.questions ?? []).map(q => q.question));
}

export function answered(question) {
  return at(state.task, question.path) !== undefined;
}

function mine(group) {
  return state.vocabulary.questions.filter(q => q.group === group);
}

/** The questions to ask now in a group: first what says which task it is, then what the rules leave open. */
export function asked(group) {
  const first = mine(group).filter(q => FIRST.includes(q.id));
  const wanted = first.some(q => !answered(q)) ? [] : [...open()];
  return mine(group).filter(q => FIRST.includes(q.id) || answered(q) || wanted.includes(q.id));
}

/** What is behind "more": first what would change the advice, then the rest. */
export function extras(group) {
  const now = new Set(asked(group).map(q => q.id));
  const rest = mine(group).filter(q => !now.has(q.id));
  const matters = new Set(state.matters ?? []);
  return { would: rest.filter(q => matters.has(q.id)), others: rest.filter(q => !matters.has(q.id)) };
}

/** Agents whose level the rules ask for. */
export function openLevels() {
  return (state.advice?.questions ?? []).filter(q => q.question.startsWith('exposures.') && TIMES.includes(q.question.split('.')[2]));
}

/** How many questions of a step have no answer yet. */
export function left(step) {
  if (step === 'exposures') {
    const judged = new Set((Array.isArray(state.task.exposures) ? state.task.exposures : []).filter(e => e?.judged).map(e => e.agent));
    return openLevels().filter(q => !judged.has(q.question.split('.')[1])).length;
  }
  return step === 'last' ? LAST.flatMap(asked).filter(q => !answered(q)).length : asked(step).filter(q => !answered(q)).length;
}

/** The steps in order; the groups of the last one are behind "more" as a whole. */
export function steps() {
  const found = [...new Set(state.vocabulary.questions.map(q => q.group))].filter(group => !LAST.includes(group) && !ORDER.includes(group));
  return [...ORDER, ...found, 'last'];
}

export function groupsOf(step) {
  return step === 'last' ? LAST.filter(group => mine(group).length > 0) : [step];
}

/** True until it is known which task it is: then the other steps have nothing to ask yet. */
export function begun() {
  return mine('task').filter(q => FIRST.includes(q.id)).every(answered);
}

/** The next step with an open question after this one, or the one that follows. */
export function after(step) {
  const all = steps();
  const later = all.slice(all.indexOf(step) + 1);
  return later.find(s => left(s) > 0) ?? later[0];
}

export function before(step) {
  const all = steps();
  return all[all.indexOf(step) - 1];
}

export function stepOf(path) {
  if (path.startsWith('exposures')) return 'exposures';
  const group = state.vocabulary.questions.find(q => q.path === path)?.group;
  if (group === undefined) return undefined;
  return LAST.includes(group) ? 'last' : group;
}
