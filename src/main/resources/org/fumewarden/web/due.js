// What is due, in words: deeds, days, and the tags of the board.

import { el } from './dom.js';
import { dayWords, has, say } from './words.js';

export const ORDER = ['not-in-service', 'overdue', 'before-first-use', 'due-today', 'due-soon', 'not-known', 'in-time'];
export const SIGNS = { overdue: '!', 'before-first-use': '!', 'due-today': '\u25C6', 'due-soon': '\u25C7', 'not-in-service': '\u2715', 'not-known': '?', 'in-time': '\u2713' };

/** A deed as people say it: the kind of entry, with what it is about behind it. */
export function deedWords(deed) {
  const [kind, ...rest] = deed.split('/');
  if (has(`done.${deed}`)) return say(`done.${deed}`);
  const words = has(`deed.${kind}`) ? say(`deed.${kind}`) : has(`done.${kind}`) ? say(`done.${kind}`) : kind.replaceAll('-', ' ');
  return rest.length === 0 ? words : `${words}: ${rest.join('/').replaceAll('-', ' ')}`;
}

/** A link to a paper that opens in a tab of its own, or to a file. */
export function paperLink(sheet, id, words, file) {
  return el('a', { href: `paper/${sheet}?${new URLSearchParams({ ...(id !== undefined && { item: id }), language: document.documentElement.lang })}`, ...(file ? { download: file } : { target: '_blank', rel: 'noopener' }) },
    words, !file && el('span', { className: 'unseen' }, ` ${say('ui.newtab')}`));
}

function clause(duty) {
  return el('li', {}, el('span', {}, duty.what), el('span', { className: 'cite' }, ` ${duty.source}, ${duty.clause}; ${has(`who.${duty.who.replaceAll(' ', '-')}`) ? say(`who.${duty.who.replaceAll(' ', '-')}`) : duty.who}`),
    duty.unverified && el('strong', { className: 'unverified' }, ` \u25B3 ${say('sheet.unverified')}`));
}

export function whenWords(owing) {
  const done = owing.last ? say('ui.upkeep.last', dayWords(owing.last)) : say(owing.failed ? 'ui.upkeep.never.passed' : 'ui.upkeep.never');
  const last = owing.failed ? `${done}, ${say('ui.upkeep.failed', dayWords(owing.failed))}` : done;
  const due = owing.due ? say('ui.upkeep.due', dayWords(owing.due)) : '';
  const over = owing['days-over'] > 0 ? say('ui.upkeep.over', owing['days-over']) : '';
  return [over, due, last].filter(Boolean).join(' \u00B7 ');
}

/** One thing that is due, as a tag. */
export function tag(owing, act) {
  const words = `${owing.item} ${deedWords(owing.deed)}`;
  return el('li', { className: `hang ${owing.status}` },
    el('p', {}, el('b', {}, owing.item), ` ${owing.label}`, owing.wearer && el('span', { className: 'cite' }, ` ${say('ui.upkeep.wearer', owing.wearer)}`)),
    el('p', { className: 'deed' }, el('span', { className: 'sign', 'aria-hidden': 'true' }, SIGNS[owing.status]), ` ${say(`due.${owing.status}`)}: ${deedWords(owing.deed)}`),
    el('p', {}, whenWords(owing)),
    owing.assumed.length > 0 && el('p', { className: 'cite' }, say('ui.upkeep.assumed', owing.assumed.map(f => (has(`fact.${f}`) ? say(`fact.${f}`) : f)).join(', '))),
    owing.note && !owing.note.startsWith('never') && el('p', { className: 'cite' }, owing.note),
    el('details', {}, el('summary', {}, say('ui.upkeep.why', owing.duties.length), el('span', { className: 'cite' }, ` ${owing.duties[0].clause}`)),
      el('ul', { className: 'plain' }, owing.duties.map(clause))),
    el('p', { className: 'choices' }, el('button', { type: 'button', className: 'quiet', 'aria-label': `${say('ui.upkeep.log.it')}: ${words}`, onclick: () => act(owing) }, say('ui.upkeep.log.it'))));
}

/** All that is due, overdue first. */
export function board(owings, act) {
  const groups = ORDER.map(status => [status, owings.filter(o => o.status === status)]).filter(([, list]) => list.length > 0);
  return groups.length === 0 ? el('p', {}, say('ui.upkeep.nothing'))
    : groups.map(([status, list]) => el('section', {}, el('h4', {}, `${SIGNS[status]} ${say(`due.${status}`)} (${list.length})`),
      el('ul', { className: 'board' }, list.map(o => tag(o, act)))));
}
