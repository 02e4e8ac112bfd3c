// Units, wearers and their upkeep: what is owed first, then the log entry, then what the log says of one item.

import { askJson } from './server.js';
import { el, fresh, ruleWords } from './dom.js';
import { state } from './state.js';
import { has, say } from './words.js';
import { logForm } from './logform.js';

const ORDER = ['overdue', 'before-first-use', 'due-today', 'due-soon', 'not-in-service', 'in-time'];
const SIGNS = { overdue: '\u25B2', 'before-first-use': '\u25B3', 'due-today': '\u25C6', 'due-soon': '\u25C7', 'not-in-service': '\u2715', 'in-time': '\u2713' };
const SPANS = ['P7D', 'P30D', 'P90D', 'P1Y'];
let span = 'P30D';

/** A deed as people say it: the kind of entry, with what it is about behind it. */
export function deedWords(deed) {
  const [kind, ...rest] = deed.split('/');
  const words = has(`deed.${kind}`) ? say(`deed.${kind}`) : kind.replaceAll('-', ' ');
  return rest.length === 0 ? words : `${words}: ${rest.join('/').replaceAll('-', ' ')}`;
}

function paper(sheet, id, words) {
  return el('a', { href: `/paper/${sheet}${id === undefined ? '' : `?item=${encodeURIComponent(id)}`}`, target: '_blank', rel: 'noopener' },
    words, el('span', { className: 'unseen' }, ` ${say('ui.newtab')}`));
}

function clause(duty) {
  return el('li', {}, ruleWords('span', duty.what), el('span', { className: 'cite' }, ` ${duty.id} \u00B7 ${duty.source}, ${duty.clause} (${duty.force}); ${duty.who}`),
    duty.unverified && el('strong', { className: 'unverified' }, ` \u25B3 ${say('sheet.unverified')}`));
}

function when(owing) {
  const done = owing.last ? say('ui.upkeep.last', owing.last) : say(owing.failed ? 'ui.upkeep.never.passed' : 'ui.upkeep.never');
  const last = owing.failed ? `${done}, ${say('ui.upkeep.failed', owing.failed)}` : done;
  const due = owing.due ? say('ui.upkeep.due', owing.due) : '';
  const over = owing['days-over'] > 0 ? say('ui.upkeep.over', owing['days-over']) : '';
  return [over, due, last].filter(Boolean).join(' \u00B7 ');
}

function tag(owing, act) {
  const words = `${owing.item} ${deedWords(owing.deed)}`;
  return el('li', { className: `hang ${owing.status}` },
    el('p', {}, el('b', {}, owing.item), ` ${owing.label}`, owing.wearer && el('span', { className: 'cite' }, ` ${say('ui.upkeep.wearer', owing.wearer)}`)),
    el('p', { className: 'deed' }, el('span', { className: 'sign', 'aria-hidden': 'true' }, SIGNS[owing.status]), ` ${deedWords(owing.deed)}`),
    el('p', {}, when(owing)),
    owing.assumed.length > 0 && el('p', { className: 'cite' }, say('ui.upkeep.assumed', owing.assumed.join(', '))),
    owing.note && ruleWords('p', owing.note, 'cite'),
    el('details', {}, el('summary', {}, say('ui.upkeep.why', owing.duties.length), el('span', { className: 'cite' }, ` ${owing.duties[0].clause}`)),
      el('ul', { className: 'plain' }, owing.duties.map(clause))),
    el('p', { className: 'choices' },
      el('button', { type: 'button', className: 'quiet', 'aria-label': `${say('ui.upkeep.log.it')}: ${words}`, onclick: () => act.log(owing.item, owing.deed) }, say('ui.upkeep.log.it')),
      el('button', { type: 'button', className: 'quiet', 'aria-label': `${say('ui.upkeep.history')}: ${words}`, onclick: () => act.history(owing.item) }, say('ui.upkeep.history'))));
}

function owed(told, act) {
  const groups = ORDER.map(status => [status, told.owings.filter(o => o.status === status)]).filter(([, list]) => list.length > 0);
  return groups.length === 0 ? el('p', {}, say('ui.upkeep.nothing'))
    : groups.map(([status, list]) => el('section', {}, el('h4', {}, `${SIGNS[status]} ${say(`due.${status}`)} (${list.length})`),
      el('ul', { className: 'board' }, list.map(o => tag(o, act)))));
}

function doubts(told) {
  return told.doubts.length === 0 ? null : el('section', {}, el('h3', {}, say('ui.upkeep.doubts')), el('ul', { className: 'fault' }, told.doubts.map(d => el('li', {}, d))));
}

function unsettled(told) {
  return told.unsettled.length === 0 ? null : el('section', {}, el('h3', {}, say('ui.upkeep.unsettled')),
    el('ul', {}, told.unsettled.map(u => el('li', {}, say('ui.upkeep.unsettled.one', u.fact.replaceAll('-', ' '), u.items, u.example), el('span', { className: 'cite' }, ` ${u.duties.join(', ')}`)))));
}

function closed(told) {
  const out = told.items.filter(i => !i['in-service']);
  return out.length === 0 ? null : el('section', { className: 'withdrawn' }, el('h3', {}, `\u2715 ${say('ui.upkeep.closed')}`),
    el('ul', {}, out.map(i => el('li', {}, el('b', {}, i.id), ` ${i.label}: `, ruleWords('span', i.because)))));
}

function entry(e, act) {
  const parts = e.parts.filter(p => p.name !== 'result');
  return el('li', { className: e.superseded ? 'past' : '' },
    el('p', {}, el('b', {}, say('ui.upkeep.entry', e.sequence)), ` ${e.on} \u00B7 ${deedWords(e.deed)} \u00B7 `, el('b', {}, say(`result.${e.result}`)), ` \u00B7 ${e.by}`),
    e.corrects && el('p', { className: 'cite' }, say('ui.upkeep.corrects', e.corrects)),
    e.superseded && el('p', { className: 'cite' }, say('ui.upkeep.superseded')),
    el('dl', { className: 'parts' }, parts.map(p => el('div', {}, el('dt', {}, say(`entry.${p.name}`)), el('dd', {}, p.value)))),
    !e.superseded && !['registration', 'correction'].includes(e.deed) && el('button', { type: 'button', className: 'quiet',
      'aria-label': `${say('ui.upkeep.correct')}: ${say('ui.upkeep.entry', e.sequence)}`, onclick: () => act.correct(e) }, say('ui.upkeep.correct')));
}

async function history(id, told, out, act) {
  const found = await askJson('api/history', { item: id });
  const item = told.items.find(i => i.id === id);
  const head = el('h3', { tabIndex: -1 }, say('ui.upkeep.history.of', found.item, found.label));
  out.replaceChildren(head,
    item && !item['in-service'] && el('p', { className: 'fault' }, ruleWords('span', item.because)),
    el('p', { className: 'choices' }, paper('examination', id, say('ui.upkeep.record')), item?.kind === 'unit' && paper('card', id, say('ui.upkeep.card'))),
    el('ul', { className: 'plain entries' }, found.entries.map(e => entry({ ...e, item: id }, act))));
  head.focus();
}

function chooseItem(told, act) {
  const id = fresh('item');
  const choose = el('select', { id }, told.items.map(i => el('option', { value: i.id }, `${i.id}: ${i.label}`)));
  return el('p', { className: 'choices' }, el('label', { htmlFor: id }, say('ui.upkeep.item')), choose,
    el('button', { type: 'button', onclick: () => act.history(choose.value) }, say('ui.upkeep.history')));
}

function within(redraw) {
  const id = fresh('within');
  return el('p', { className: 'choices' }, el('label', { htmlFor: id }, say('ui.upkeep.within')),
    el('select', { id, onchange: e => { span = e.target.value; redraw(); } }, SPANS.map(s => el('option', { value: s, selected: s === span }, say(`span.${s}`)))),
    paper('due', undefined, say('ui.upkeep.due.print')));
}

/** Draws the place; without a store it says how to open one. */
export async function drawUpkeep(root, focusWithin) {
  let told;
  try {
    told = await askJson('api/upkeep', { code: state.task.code, within: span });
  } catch (fault) {
    root.replaceChildren(...(fault.problems ?? []).map(p => el('p', { className: 'fault' }, `${p.message} ${say('ui.maybe', p.maybe)}`)));
    return;
  }
  if (!told.open) {
    root.replaceChildren(el('p', {}, say('ui.upkeep.none')), el('p', {}, el('code', {}, 'fumewarden serve --store yard.db')), el('p', { className: 'hint' }, say('ui.upkeep.none.first')),
      el('p', {}, el('code', {}, 'fumewarden register unit --store yard.db id=U-014 description="blower unit"')));
    return;
  }
  const past = el('div', {});
  const redraw = after => drawUpkeep(root, after ?? 'select');
  const form = logForm(told, redraw);
  const act = {
    log: form.prefill,
    correct: form.correct,
    history: id => history(id, told, past, act).catch(() => { /* the notice line says what happened */ }),
  };
  root.replaceChildren(...[el('p', { className: 'hint' }, say('ui.upkeep.hint', told.file, told.code, told.today)), doubts(told), closed(told),
    el('section', {}, el('h3', {}, say('ui.upkeep.owed')), within(redraw), owed(told, act)), unsettled(told),
    form.node, el('section', {}, el('h3', {}, say('ui.upkeep.look')), chooseItem(told, act), past),
    el('p', { className: 'closing' }, say('closing'))].filter(Boolean));
  if (focusWithin) root.querySelector(focusWithin)?.focus();
}
