// Units, people and their upkeep, by item: type or scan an id. Below: the list, what is due, and what can be printed.

import { askJson } from './server.js';
import { el, fresh, ruleWords } from './dom.js';
import { state } from './state.js';
import { dayWords, has, say } from './words.js';
import { whoLine } from './acts.js';
import { codeWords } from './head.js';
import { board, deedWords, ORDER, paperLink, SIGNS } from './due.js';
import { drawItem } from './item.js';
import { registerBox } from './register.js';

const SPANS = ['P7D', 'P30D', 'P90D', 'P1Y'];
let span = 'P30D';
let looked = '';

/** The most pressing thing that is due for an item; nothing is in time while it is not known what is due. */
function worst(item, told) {
  if (!item['in-service']) return 'not-in-service';
  const found = ORDER.find(status => told.owings.some(o => o.item === item.id && o.status === status)) ?? 'in-time';
  return found === 'in-time' && told.unsettled.some(u => u.ids.includes(item.id)) ? 'not-known' : found;
}

function list(told, open) {
  const search = fresh('search');
  const kindId = fresh('kind');
  const stateId = fresh('state');
  const out = el('ul', { className: 'plain items' });
  const count = el('p', { className: 'hint', role: 'status' });
  const words = el('input', { type: 'search', id: search, maxLength: 60, oninput: draw });
  const kind = el('select', { id: kindId, onchange: draw }, el('option', { value: '' }, say('ui.all')), [...new Set(told.items.map(i => i.kind))].map(k => el('option', { value: k }, say(`kind.${k}`))));
  const status = el('select', { id: stateId, onchange: draw }, el('option', { value: '' }, say('ui.all')), ORDER.map(s => el('option', { value: s }, say(`due.${s}`))));
  function draw() {
    const sought = words.value.trim().toLowerCase();
    const found = told.items.filter(i => (!kind.value || i.kind === kind.value) && (!status.value || worst(i, told) === status.value)
      && `${i.id} ${i.label}`.toLowerCase().includes(sought));
    count.textContent = say('ui.items.count', found.length, told.items.length);
    out.replaceChildren(...found.slice(0, 200).map(i => {
      const s = worst(i, told);
      return el('li', {}, el('button', { type: 'button', className: 'quiet line', onclick: () => open(i.id) }, el('b', {}, i.id), ` ${i.label} `,
        el('span', { className: `badge ${s}` }, `${SIGNS[s]} ${say(`due.${s}`)}`)));
    }));
  }
  draw();
  return el('details', { className: 'more', id: 'items' }, el('summary', {}, `${say('ui.items')} (${told.items.length})`),
    el('div', { className: 'choices' }, el('label', { htmlFor: search }, say('ui.items.search')), words, el('label', { htmlFor: kindId }, say('ui.items.kind')), kind,
      el('label', { htmlFor: stateId }, say('ui.items.state')), status), count, out);
}

function doubts(told) {
  return told.doubts.length === 0 ? null : el('section', {}, el('h3', {}, say('ui.upkeep.doubts')), el('ul', { className: 'fault' }, told.doubts.map(d => ruleWords('li', d))));
}

function unsettled(told) {
  const fact = id => (has(`fact.${id}`) ? say(`fact.${id}`) : id.replaceAll('-', ' '));
  return told.unsettled.length === 0 ? null : el('details', { className: 'more' }, el('summary', {}, `${say('ui.upkeep.unsettled')} (${told.unsettled.length})`),
    el('ul', {}, told.unsettled.map(u => el('li', {}, say('ui.upkeep.unsettled.one', fact(u.fact), u.ids.join(', '), u.deeds.map(deedWords).join(', '))))));
}

function dueBox(told, open, redraw) {
  const id = fresh('within');
  return el('details', { className: 'more', id: 'due', open: true }, el('summary', {}, el('h3', {}, `${say('ui.upkeep.owed')} (${told.owings.length})`)),
    el('p', { className: 'choices' }, el('label', { htmlFor: id }, say('ui.upkeep.within')),
      el('select', { id, onchange: e => { span = e.target.value; redraw(); } }, SPANS.map(s => el('option', { value: s, selected: s === span }, say(`span.${s}`)))),
      paperLink('due', undefined, say('ui.upkeep.due.print')), paperLink('calendar', undefined, say('ui.calendar'), 'fumewarden-due.ics'), paperLink('labels', undefined, say('ui.labels'))),
    board(told.owings, o => open(o.item)), unsettled(told));
}

/** The box that a scanner types into. */
function scan(told, open) {
  const id = fresh('scan');
  const out = el('p', { className: 'fault', role: 'alert' });
  const input = el('input', { type: 'text', id, className: 'scan', maxLength: 80, autocomplete: 'off', autocapitalize: 'characters', spellcheck: false, value: '' });
  const look = () => {
    const sought = input.value.trim();
    const found = told.items.find(i => i.id === sought) ?? told.items.find(i => i.id.toLowerCase() === sought.toLowerCase());
    out.textContent = sought && !found ? say('ui.item.unknown', sought) : '';
    if (found) {
      input.value = '';
      open(found.id);
    }
  };
  input.addEventListener('keydown', event => { if (event.key === 'Enter') { event.preventDefault(); look(); } });
  return el('div', { className: 'scan-box' }, el('label', { htmlFor: id }, say('ui.scan')), el('div', { className: 'choices' }, input, el('button', { type: 'button', className: 'large', onclick: look }, say('ui.scan.go'))), out);
}

/** Draws the place; without a store it says how to open one. */
export async function drawUpkeep(root) {
  let told;
  try {
    told = await askJson('api/upkeep', { code: state.task.code, within: span, language: document.documentElement.lang });
  } catch {
    root.replaceChildren(el('p', { className: 'fault' }, say('ui.upkeep.unread')));
    return;
  }
  if (!told.open) {
    root.replaceChildren(el('p', {}, say('ui.upkeep.none')), el('p', {}, el('code', {}, 'fumewarden serve --store yard.db')));
    return;
  }
  const item = el('section', { className: 'item', 'aria-label': say('ui.upkeep.item') });
  const below = el('div', {});
  const open = id => {
    looked = id;
    drawItem(item, id, told.kinds, refresh).then(() => item.scrollIntoView({ block: 'start' }));
  };
  const fill = () => below.replaceChildren(...[doubts(told), list(told, open), dueBox(told, open, refresh),
    registerBox(told['item-kinds'], id => { refresh(); open(id); })].filter(Boolean));
  async function refresh() {
    const opened = new Set([...below.querySelectorAll('details[id][open]')].map(d => d.id));
    told = await askJson('api/upkeep', { code: state.task.code, within: span, language: document.documentElement.lang });
    fill();
    for (const id of ['items', 'due', 'register']) document.getElementById(id)?.toggleAttribute('open', opened.has(id));
  }
  fill();
  root.replaceChildren(whoLine(), scan(told, open), item, below, el('p', { className: 'hint' }, say('ui.upkeep.hint', told.file, codeWords(state.codes.find(c => c.name === told.code) ?? { name: told.code }), dayWords(told.today))));
  if (looked && told.items.some(i => i.id === looked)) open(looked);
}
