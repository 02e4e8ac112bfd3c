// A round for a room: one question large on the projector. The trainer counts raised hands on the number keys; no names, no network of the room.

import { el, ruleWords } from './dom.js';
import { say } from './words.js';

function key(label, words) {
  return [el('kbd', {}, label), ` ${words} `];
}

/** Shows a round over the whole page until the trainer leaves. */
export function openRoom(round) {
  const before = document.activeElement;
  const counts = round.items.map(item => item.choices.map(() => 0));
  const presses = round.items.map(() => []);
  let at = -1;
  let shown = false;
  const stage = el('div', { className: 'stage' });
  const keys = el('p', { className: 'keys' });
  const room = el('section', { className: 'room', role: 'dialog', 'aria-modal': 'true', 'aria-label': say('ui.training.room'), onkeydown: pressed }, stage, keys);

  function count(choice) {
    if (shown || at < 0 || at >= round.items.length || choice >= counts[at].length) return;
    counts[at][choice] += 1;
    presses[at].push(choice);
    draw(choice);
  }

  function undo() {
    const last = shown || at < 0 || at >= round.items.length ? undefined : presses[at].pop();
    if (last !== undefined) counts[at][last] -= 1;
    draw();
  }

  function forward() {
    if (at >= 0 && at < round.items.length && !shown) shown = true;
    else {
      at = Math.min(at + 1, round.items.length);
      shown = false;
    }
    draw();
  }

  function leave() {
    room.remove();
    document.getElementById('page').inert = false;
    before?.focus();
  }

  function pressed(event) {
    if (/^[1-9]$/.test(event.key)) count(Number(event.key) - 1);
    else if (event.key === 'Backspace') undo();
    else if (event.key === 'Escape') leave();
    else if (event.key === 'Enter' && event.target.tagName !== 'BUTTON') forward();
    else return;
    event.preventDefault();
  }

  function opening() {
    return [el('h2', { tabIndex: -1 }, round.title), round.story && el('p', { className: 'tale' }, round.story),
      el('ul', { className: 'known' }, round.facts.map(f => el('li', {}, f))), el('p', { className: 'cite' }, round.code)];
  }

  function question(item) {
    const all = counts[at].reduce((s, n) => s + n, 0);
    return [el('h2', { tabIndex: -1 }, `${at + 1}. ${item.ask}`),
      el('ol', { className: 'answers' }, item.choices.map((words, i) => {
        const mark = item.marks[i];
        const share = all === 0 ? 0 : counts[at][i] / all;
        return el('li', { className: shown ? (mark.right ? 'right' : 'not-right') : '' },
          el('button', { type: 'button', disabled: shown, 'data-choice': String(i), onclick: () => count(i) }, el('b', {}, `${i + 1}`), ' ', words),
          el('span', { className: 'counted', 'aria-label': say('ui.training.counted', counts[at][i]) }, String(counts[at][i])),
          shown && el('meter', { min: 0, max: 1, value: share, 'aria-label': say('ui.training.counted', counts[at][i]) }),
          shown && el('p', {}, el('b', {}, mark.right ? `\u2713 ${say('ui.training.right')}` : '\u2715'), ' ', mark.mistake, mark.unread && ruleWords('span', ` ${mark.unread}`), mark.right && ruleWords('span', ` ${mark.because}`),
            mark.right && mark.clause && el('span', { className: 'cite' }, ` ${mark.clause}`)));
      })), !shown && el('p', { className: 'cite' }, say('ui.training.hands', all)),
      !shown && round.facts.length > 0 && el('details', { className: 'again' }, el('summary', {}, say('ui.training.known')), el('p', {}, round.story), el('ul', { className: 'known' }, round.facts.map(f => el('li', {}, f))))];
  }

  function result() {
    const lines = round.items.map((item, i) => {
      const all = counts[i].reduce((s, n) => s + n, 0);
      const right = item.marks.reduce((s, m, c) => s + (m.right ? counts[i][c] : 0), 0);
      return { ask: item.ask, answer: item.choices[item.marks.findIndex(m => m.right)], all, right, wrong: all - right };
    }).filter(l => l.all > 0).sort((a, b) => b.wrong / b.all - a.wrong / a.all || b.wrong - a.wrong);
    const mistakes = new Map();
    round.items.forEach((item, i) => item.marks.forEach((m, c) => {
      if (!m.right && counts[i][c] > 0) mistakes.set(m.mistake, (mistakes.get(m.mistake) ?? 0) + counts[i][c]);
    }));
    const worst = [...mistakes].sort((a, b) => b[1] - a[1]).slice(0, 3);
    return [el('h2', { tabIndex: -1 }, say('ui.training.result')),
      lines.length === 0 && el('p', {}, say('ui.training.nobody')),
      el('ol', { className: 'most' }, lines.map(l => el('li', {}, el('b', {}, say('ui.training.of', l.right, l.all)), ' ', l.ask, ' ', el('span', {}, `\u2192 ${l.answer}`)))),
      worst.length > 0 && el('h3', {}, say('ui.training.worst')), el('ul', {}, worst.map(([words, n]) => el('li', {}, el('b', {}, String(n)), ' ', words))),
      el('p', { className: 'closing' }, say('closing'))];
  }

  function draw(focused) {
    stage.replaceChildren(...(at < 0 ? opening() : at < round.items.length ? question(round.items[at]) : result()).flat().filter(n => n));
    const next = at >= round.items.length ? null : el('button', { type: 'button', id: 'room-next', onclick: forward }, say(at < 0 || shown ? 'ui.training.next' : 'ui.training.show'));
    const asking = at >= 0 && at < round.items.length;
    keys.replaceChildren(...[next, asking && !shown && el('button', { type: 'button', className: 'quiet', onclick: undo }, say('ui.training.undo')),
      el('button', { type: 'button', className: 'quiet', id: 'room-leave', onclick: leave }, say('ui.training.leave')),
      el('span', { className: 'help' }, asking && key('1-4', say('ui.training.key.count')), asking && key('\u232B', say('ui.training.undo')), key('Enter', say('ui.training.key.next')), key('Esc', say('ui.training.leave')))].filter(n => n));
    (focused === undefined ? stage.querySelector('h2') : stage.querySelector(`[data-choice="${focused}"]`))?.focus();
    if (focused === undefined) room.scrollTop = 0;
  }

  document.body.append(room);
  document.getElementById('page').inert = true;
  draw();
}
