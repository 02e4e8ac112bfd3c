// The steps of the description: one for each group of questions, with what is asked in it and what waits behind "more".

import { at, state } from './state.js';

const FIRST = ['process', 'base-metal', 'coating', 'place', 'extraction'];
/** Groups that are asked about only when somebody wants to. */
const LAST = ['upkeep', 'estimate', 'unit'];
const ORDER = ['task', 'atmosphere', 'exposures', 'wearer', 'kit'];
/** A question that is asked in another step than that of its group. */
const ELSEWHERE = { purpose: 'wearer' };

/** What the rules leave open, by the last advice that came. */
function openQuestions() {
  return (state.advice ?? state.last)?.questions ?? [];
}

function groupOf(question) {
  return ELSEWHERE[question.id] ?? question.group;
}

export function answered(question) {
  return at(state.task, question.path) !== undefined;
}

/** True while the rules have nothing to go by: no answer, or "unknown" where they need one. */
export function isOpen(question) {
  const value = at(state.task, question.path);
  return value === undefined || (value === 'unknown' && openQuestions().some(q => q.question === question.id));
}

function mine(group) {
  return state.vocabulary.questions.filter(q => groupOf(q) === group);
}

/** The questions to ask now in a group: first what says which task it is, then what the rules leave open. */
export function asked(group) {
  const first = mine(group).filter(q => FIRST.includes(q.id));
  const wanted = first.some(q => !answered(q)) ? [] : openQuestions().map(q => q.question);
  return mine(group).filter(q => FIRST.includes(q.id) || answered(q) || wanted.includes(q.id));
}

/** What is behind "more": first what would change the advice, then the rest. */
export function extras(group) {
  const now = new Set(asked(group).map(q => q.id));
  const rest = mine(group).filter(q => !now.has(q.id));
  const matters = new Set(state.matters ?? []);
  return { would: rest.filter(q => matters.has(q.id)), others: rest.filter(q => !matters.has(q.id)) };
}

/** Levels that the rules ask for. */
export function openLevels() {
  return openQuestions().filter(q => q.question.startsWith('exposures.') && q.question.split('.').length === 3);
}

/** Agents whose level the rules ask for, each with its averaging times. */
export function openAgents() {
  const found = new Map();
  for (const [, agent, time] of openLevels().map(q => q.question.split('.'))) found.set(agent, [...(found.get(agent) ?? []), time]);
  return found;
}

/** How many questions of a step are open. */
export function left(step) {
  if (step === 'exposures') {
    return openLevels().length;
  }
  return (step === 'last' ? LAST.flatMap(asked) : asked(step)).filter(isOpen).length;
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
  const question = state.vocabulary.questions.find(q => q.path === path);
  if (question === undefined) return undefined;
  const group = groupOf(question);
  return LAST.includes(group) ? 'last' : group;
}
