// One item alone: may it be used, what is due, three large acts, and what the log says of it.

import { askJson, Problems } from './server.js';
import { el, fresh } from './dom.js';
import { remembered, state } from './state.js';
import { dayWords, has, say } from './words.js';
import { others, three } from './acts.js';
import { checkForm } from './check.js';
import { entryFault, entryForm } from './entry.js';
import { deedWords, ORDER, paperLink, SIGNS, whenWords } from './due.js';

/** Whether it may be used, as far as the log tells; of a person only whether something is overdue. */
function standing(item, owings) {
  const late = owings.filter(o => ['overdue', 'before-first-use'].includes(o.status));
  const thing = !['wearer', 'site', 'plant'].includes(item.kind);
  const stop = !item['in-service'];
  const word = stop ? 'stop' : late.some(o => thing && o.deed.startsWith('examination')) ? 'late' : late.length > 0 ? 'overdue' : thing ? 'good' : 'clear';
  return el('div', { className: `standing ${word}` }, el('p', {}, el('strong', { className: 'word' }, say(`ui.item.${word}`)), ' ', say(`ui.item.${word}.means`)),
    stop && item.because && el('p', {}, item.because), item.since && el('p', {}, say('ui.item.since', dayWords(item.since))));
}

function due(owings, act) {
  const list = [...owings].sort((a, b) => ORDER.indexOf(a.status) - ORDER.indexOf(b.status));
  return el('section', {}, el('h4', {}, say('ui.item.due')), list.length === 0 ? el('p', {}, say('ui.upkeep.nothing'))
    : el('ul', { className: 'plain' }, list.map(o => el('li', { className: `due-line ${o.status}` }, el('span', { className: 'sign', 'aria-hidden': 'true' }, SIGNS[o.status]),
      el('span', {}, ` ${say(`due.${o.status}`)}: `, el('b', {}, deedWords(o.deed)), ` \u00B7 ${whenWords(o)} `),
      el('button', { type: 'button', className: 'quiet', onclick: () => act(o.deed) }, say('ui.upkeep.log.it'))))));
}

function entry(e, correct) {
  const parts = e.parts.filter(p => p.name !== 'result');
  const health = e.deed.startsWith('medical');
  return el('li', { className: e.superseded ? 'past' : '' },
    el('p', {}, el('b', {}, say('ui.upkeep.entry', e.sequence)), ` ${dayWords(e.on)} \u00B7 ${deedWords(e.deed)} \u00B7 `, el('b', {}, say(`result.${e.result}`)), ` \u00B7 ${e.by}`),
    e.corrects && el('p', { className: 'cite' }, say('ui.upkeep.corrects', e.corrects)),
    e.superseded && el('p', { className: 'cite' }, say('ui.upkeep.superseded')),
    parts.length > 0 && el('dl', { className: 'parts' }, parts.map(p => el('div', {}, el('dt', {}, say(`entry.${p.name}`)), el('dd', {}, p.value)))),
    !e.superseded && !health && !['registration', 'correction'].includes(e.deed) && el('button', { type: 'button', className: 'quiet',
      'aria-label': `${say('ui.upkeep.correct')}: ${say('ui.upkeep.entry', e.sequence)}`, onclick: () => correct(e) }, say('ui.upkeep.correct')));
}

function deedValues(kind, rest, item) {
  if (kind === 'fit-test') return { model: rest };
  if (kind === 'performed') return {};
  return rest && item ? { topic: rest } : {};
}

/** Draws the item; asks the server for it anew. */
export async function drawItem(out, id, kinds, written) {
  let told;
  let past;
  try {
    told = await askJson('api/item', { item: id, code: state.task.code, language: document.documentElement.lang });
    past = await askJson('api/history', { item: id });
  } catch (fault) {
    out.replaceChildren(el('p', { className: 'fault', role: 'alert' }, fault instanceof Problems ? say('ui.item.unknown', id) : say('ui.server.down')));
    return;
  }
  const item = told.item;
  const work = el('div', { className: 'work', id: fresh('work') });
  const done = el('div', { role: 'status', className: 'done' });

  async function send(draft) {
    const by = remembered('by');
    if (!by) {
      document.querySelector('.who input')?.focus();
      return [{ field: '', said: say('ui.who.first') }];
    }
    try {
      const entry = await askJson('api/log', { ...draft, item: item.id, by, code: state.task.code, language: document.documentElement.lang });
      await drawItem(out, id, kinds, written);
      const failed = entry.result === 'failed' || entry.result === 'withdrawn';
      out.querySelector('.done').replaceChildren(el('div', { className: failed ? 'standing stop' : 'standing good' },
        el('p', {}, el('b', {}, `${failed ? '\u2715' : '\u2713'} ${say('ui.upkeep.written', entry.sequence, entry.item, say(`result.${entry.result}`))}`)),
        entry.says && el('p', {}, entry.says), entry.because && el('p', {}, `${say('ui.upkeep.now.closed')} `, entry.because)));
      out.querySelector('.done').scrollIntoView({ block: 'nearest' });
      written();
      return [];
    } catch (fault) {
      if (fault instanceof Problems) return fault.problems;
      return [{ field: '', said: say('ui.upkeep.unsure') }];
    }
  }
  function act(deed, given) {
    const [first, ...rest] = deed.split('/');
    const known = kinds.find(k => k.id === first);
    const kind = known ?? kinds.find(k => k.id === 'performed');
    const title = el('h4', { tabIndex: -1 }, has(`deed.${deed}`) ? say(`deed.${deed}`) : deedWords(deed));
    if (kind.id === 'before-use-check' && !given) {
      const fault = el('div', { role: 'alert' });
      const write = async (values, sure) => {
        const problems = await send({ kind: kind.id, on: told.today, values, sure });
        fault.replaceChildren(...problems.flatMap(p => [el('p', { className: 'fault' }, entryFault(p)), p.field === 'sure' ? el('button', { type: 'button', className: 'quiet', onclick: () => write(values, true) }, say('ui.upkeep.sure')) : '']));
      };
      work.replaceChildren(title, checkForm(item, values => write(values, false)), fault);
      title.focus();
      return;
    }
    const form = entryForm(item, kind, told.today, given ?? { values: known ? deedValues(first, rest.join('/'), item) : { task: deed } }, send);
    work.replaceChildren(title, form.node);
    form.focus();
  }
  function correct(e) {
    const values = Object.fromEntries(e.parts.map(p => [p.name, { true: 'yes', false: 'no' }[p.value] ?? p.value]));
    act(e.deed, { values, on: e.on, corrects: String(e.sequence) });
  }
  const head = el('h3', { tabIndex: -1, className: 'item-head' }, el('b', {}, item.id), ` ${item.label}`, el('span', { className: 'cite' }, ` ${say(`kind.${item.kind}`)}`));
  const more = others(item.kind, kinds.map(k => k.id));
  out.replaceChildren(head, standing(item, told.owings), done,
    el('div', { className: 'three' }, three(item.kind).map(kind => el('button', { type: 'button', className: `large ${kind}`, onclick: () => act(told.owings.map(o => o.deed).filter(d => d.startsWith(`${kind}/`)).length === 1 ? told.owings.find(o => o.deed.startsWith(`${kind}/`)).deed : kind) }, say(`ui.act.${kind}`)))),
    el('details', { className: 'more' }, el('summary', {}, say('ui.act.more')), el('p', { className: 'choices' }, more.map(kind => el('button', { type: 'button', className: 'quiet', onclick: () => act(kind) }, say(`deed.${kind}`))))),
    work, due(told.owings, act),
    el('p', { className: 'choices' }, item.kind === 'unit' && paperLink('card', id, say('ui.upkeep.card')), item.kind !== 'wearer' && paperLink('examination', id, say('ui.upkeep.record')), paperLink('labels', id, say('ui.label'))),
    el('details', { className: 'more' }, el('summary', {}, `${say('ui.upkeep.history')} (${past.entries.length})`), el('ul', { className: 'plain entries' }, past.entries.map(e => entry(e, correct)))));
  head.focus({ preventScroll: true });
}
