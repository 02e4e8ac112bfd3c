// The answer as the one page that is printed, then why: every sentence opens what it rests on, down to the rows of tables.

import { askBytes, askJson, askText } from './server.js';
import { el, keep, ruleWords } from './dom.js';
import { answerWords, askWords, at, remember, remembered, state } from './state.js';
import { has, say } from './words.js';
import { paper } from './paper.js';
import { brief, classWords, plate } from './plate.js';
import { ruler, SIGNS } from './ruler.js';
import { plots } from './plots.js';
import { faultWords } from './faults.js';
import { taskFile } from './tasks.js';

export function unverified(yes) {
  return yes ? el('strong', { className: 'unverified' }, ` \u25B3 ${say('sheet.unverified')}`) : null;
}

function citation(c) {
  return `${c.source}, ${c.clause}${c.edition ? `, ${c.edition}` : ''}`;
}

/** An answer as a person gave it: the question and the words of the choice. */
function given(premise) {
  const question = state.vocabulary.questions.find(q => q.path === premise.address);
  const value = question && at(state.task, question.path);
  if (value === undefined) return ruleWords('span', premise.words, undefined, premise.own);
  return ruleWords('span', `${question.ask} ${answerWords(question, value)}`, undefined, question.translated);
}

/** What a step rests on; earlier steps open in their turn. */
export function premises(step) {
  return el('ul', { className: 'premises' }, step.premises.map(p => {
    const earlier = p.kind === 'step' && state.advice.trail.steps.find(s => s.id === p.address);
    if (earlier) return el('li', {}, opening(earlier));
    return el('li', {}, el('span', { className: 'tag' }, say(`premise.${p.kind}`)), ' ', p.kind === 'input' ? given(p) : ruleWords('span', p.words, undefined, p.own),
      el('span', { className: 'cite' }, ` ${p.address}${p.source ? `; ${citation(p)}` : ''}`),
      unverified(p.confidence === 'memory'));
  }));
}

function rests(step) {
  return el('div', { className: 'rests' },
    el('p', {}, el('span', { className: 'tag' }, say('ui.rule')), ` ${step.rule}`),
    el('p', {}, el('span', { className: 'tag' }, say('ui.clause')), ' ', el('span', { lang: 'en' }, citation(step))),
    el('p', {}, el('span', { className: 'tag' }, say('ui.confidence')), ` ${say(`confidence.${step.confidence}`)}`),
    step['overridden-by'] && el('p', {}, say('ui.lifted', step['overridden-by'])),
    el('p', {}, el('span', { className: 'tag' }, say('ui.facts'))), premises(step));
}

/** A step that opens, or several that say the same. What is inside is made when it is first opened. */
export function opening(step, mark, alike = [step]) {
  const times = alike.length > 1 ? ` \u00B7 ${alike.length} \u00D7` : '';
  const box = el('details', { className: 'sentence' }, el('summary', {}, ruleWords('span', step.says, 'says', step.own),
    el('span', { className: 'cite' }, ` ${step.rule} \u00B7 ${step.source}, ${step.clause}${times}`), unverified(mark ?? alike.some(s => s['overall-confidence'] === 'memory'))));
  box.addEventListener('toggle', () => {
    if (box.open && box.childElementCount === 1) box.append(...alike.map(rests));
  });
  return box;
}

export function sentence(reason) {
  const step = state.advice.trail.steps.find(s => s.id === reason.step);
  return step ? opening(step, reason.unverified) : ruleWords('p', reason.says);
}

function section(key, reasons) {
  return reasons.length === 0 ? null : el('section', {}, el('h4', {}, say(`sheet.${key}`)),
    el('ul', { className: 'plain' }, reasons.map(r => el('li', {}, sentence(r)))));
}

function remedy(respirator) {
  const answer = el('div', { role: 'status' });
  const button = el('button', { type: 'button', className: 'quiet', onclick: async () => {
    button.disabled = true;
    try {
      const found = await askJson('api/explain', { task: state.task, class: respirator.class, language: document.documentElement.lang });
      answer.replaceChildren(found.remedies.length === 0 ? el('p', {}, say('ui.remedy.none', found.largest))
        : el('ul', {}, found.remedies.map(set => el('li', {}, set.map(l => l.says).join('; ')))));
    } catch { /* the notice line says what happened */ } finally {
      button.disabled = false;
    }
  } }, say('ui.remedy.ask', classWords(respirator.class)));
  return el('div', {}, button, answer);
}

function device(respirator) {
  const reasons = [...respirator.reasons, ...respirator.conditions];
  return el('details', { className: `device ${respirator.verdict}`, id: `class-${respirator.class}` },
    el('summary', {}, el('span', { className: 'sign', 'aria-hidden': 'true' }, SIGNS[respirator.verdict]),
      el('b', {}, ` ${classWords(respirator.class)}`), ' ', ruleWords('span', respirator.name, undefined, has(`device.${respirator.class}`)),
      el('span', { className: 'cite' }, ` ${say('column.factor')} ${respirator.factor ?? '-'}, ${say('column.filter')} ${respirator.filter}`),
      unverified(respirator.reasons.some(r => r.unverified))),
    el('ul', { className: 'plain' }, reasons.map(r => el('li', {}, sentence(r)))),
    ['barred', 'undecided'].includes(respirator.verdict) && remedy(respirator));
}

function devices(advice) {
  return ['suitable', 'undecided', 'barred'].map(verdict => {
    const these = advice.respirators.filter(r => r.verdict === verdict);
    return these.length === 0 ? null : el('section', {}, el('h4', {}, `${SIGNS[verdict]} ${say(`sheet.${verdict}`)}`), these.map(device));
  });
}

function questions(advice) {
  if (advice.questions.length === 0) return null;
  const order = el('div', { role: 'status' });
  const button = el('button', { type: 'button', className: 'quiet', onclick: async () => {
    try {
      const found = await askJson('api/ask-first', { task: state.task });
      const ask = w => askWords({ ...w, ...advice.questions.find(q => q.question === w.question) });
      order.replaceChildren(el('ol', {}, found.worths.map(w => el('li', {}, ask(w), ` ${say('ui.worth', w.least, w.most)}`))));
    } catch { /* the notice line says what happened */ }
  } }, say('ui.ask-first'));
  return el('section', {}, el('h4', {}, say('sheet.open')),
    el('ul', { className: 'plain' }, advice.questions.map(q => el('li', {}, el('p', { className: 'says' }, askWords(q)), q.reasons.map(sentence)))), button, order);
}

function why(advice) {
  const best = advice.respirators.find(r => r.verdict === 'recommended');
  return [section('stops', advice.stops), section('conflicts', advice.conflicts), questions(advice),
    best && section('conditions', best.conditions), best && section('chosen', best.reasons),
    section('controls', advice['controls-first']), section('hazards', advice.hazards), section('filters', advice.filters), plots(),
    el('section', {}, el('h4', {}, say('ui.rungs')), ruler(advice)), ...devices(advice), section('cautions', advice.cautions)].filter(Boolean);
}

async function keepSheet(kind) {
  const asked = { task: state.task, language: document.documentElement.lang, detail: Boolean(remembered('annex')) };
  try {
    if (kind === 'pdf') keep(taskFile('pdf'), await askBytes('api/pdf', asked), 'application/pdf');
    else keep(taskFile('html'), await askText('api/sheet', asked), 'text/html');
  } catch { /* the notice line says what happened */ }
}

function tools(root) {
  const annex = el('input', { type: 'checkbox', id: 'annex', checked: Boolean(remembered('annex')), onchange: () => { remember('annex', annex.checked); drawAdvice(root); document.getElementById('annex').focus(); } });
  return el('p', { className: 'tools no-print' },
    el('button', { type: 'button', onclick: () => window.print() }, say('ui.print')),
    el('button', { type: 'button', onclick: () => keepSheet('html') }, say('ui.sheet.html')),
    el('button', { type: 'button', onclick: () => keepSheet('pdf') }, say('ui.sheet.pdf')),
    el('label', { className: 'choice' }, annex, el('span', {}, say('ui.annex'))),
    el('a', { href: '#describe' }, say('ui.answer.more')));
}

/** Draws the advice, or says why there is none. */
export function drawAdvice(root) {
  const advice = state.advice;
  if (!advice) {
    root.replaceChildren(el('p', {}, say(state.problems.length ? 'ui.advice.wrong' : 'ui.deciding.first')),
      el('ul', {}, state.problems.map(p => el('li', {}, faultWords(p)))), el('p', {}, el('a', { href: '#describe' }, say('ui.answer.more'))));
    return;
  }
  const box = el('details', { className: 'why no-print' }, el('summary', {}, el('h3', {}, say('ui.why'))));
  box.addEventListener('toggle', () => {
    if (box.open && box.childElementCount === 1) box.append(...why(advice));
  });
  root.replaceChildren(tools(root), paper(Boolean(remembered('annex')), plate(brief(advice), say('sheet.answer'))), box);
}
