// The training room: rounds to order or about the current task, alone with one question at a time, or for a room on a projector.

import { codeWords } from './head.js';
import { askBytes, askJson, Problems } from './server.js';
import { el, fresh, keep, ruleWords } from './dom.js';
import { remember, remembered, state } from './state.js';
import { has, say } from './words.js';
import { openRoom } from './room.js';

const TOPICS = ['particle', 'gas', 'confined-space', 'oxygen', 'lead', 'stainless', 'fit', 'upkeep', 'alarms', 'before-use-powered-hood', 'before-use-powered-mask', 'before-use-airline-hood'];
const KEPT = 'training';
let styled = false;

function style() {
  if (!styled) document.head.append(el('link', { rel: 'stylesheet', href: 'training.css' }));
  styled = true;
}

/** What a round is made of: the same words make the same round. */
function ordered(chosen) {
  const spec = { language: document.documentElement.lang, ...chosen };
  return chosen.topic === 'task' ? { ...spec, task: state.task, story: String(state.task.because ?? '') } : spec;
}

function story(round) {
  return el('section', { className: 'story', 'aria-label': say('ui.training.story') }, el('h3', {}, round.title),
    round.story && el('p', {}, round.story), round.facts.length > 0 && el('details', { open: innerWidth > 700 }, el('summary', {}, say('ui.training.known')), el('ul', {}, round.facts.map(f => el('li', {}, f)))),
    el('p', { className: 'cite' }, codeWords(state.codes.find(c => c.name === round.code) ?? { name: round.code })));
}

/** A mark in full: what was behind the answer, why, and what would have been right. */
export function told(mark) {
  const word = mark.verdict === 'skipped' ? say('ui.training.skipped') : say(mark.right ? 'ui.training.right' : 'ui.training.not');
  return el('div', { className: `told ${mark.right ? 'right' : 'not-right'}` },
    el('p', { className: 'lead' }, el('b', {}, `${mark.right ? '\u2713' : mark.verdict === 'skipped' ? '\u2013' : '\u2715'} ${word}`), ' ', mark.mistake),
    mark.unread && el('p', {}, mark.unread),
    mark.because && mark.because !== mark.instead && el('p', {}, ruleWords('span', mark.because), ' ', el('span', { className: 'cite' }, mark.clause)),
    mark.instead && el('p', {}, say('ui.training.instead', mark.instead), mark.because === mark.instead && el('span', { className: 'cite' }, ` ${mark.clause}`)));
}

function alone(out, spec, round, earlier) {
  const marks = earlier;
  const place = el('div', {});
  out.replaceChildren(story(round), place);
  const hold = () => remember(KEPT, marks.length < round.items.length ? { spec, marks } : null);

  async function answered(body, item, result, button) {
    const mark = await askJson('api/training/mark', { ...ordered(spec), item: marks.length, ...body });
    if (mark.verdict === 'unread') {
      result.replaceChildren(el('p', { className: 'fault' }, mark.unread));
      return;
    }
    marks.push({ ...mark, ask: item.ask });
    hold();
    button.closest('form').querySelectorAll('input, button').forEach(b => { b.disabled = true; });
    const next = el('button', { type: 'button', onclick: show }, say(marks.length < round.items.length ? 'ui.training.next' : 'ui.training.end'));
    result.replaceChildren(told(mark), next);
    next.focus();
  }

  function question(item) {
    const group = fresh('choice');
    const own = fresh('own');
    const result = el('div', { role: 'status' });
    const radios = item.choices.map((c, i) => el('label', { className: 'choice big' }, el('input', { type: 'radio', name: group, value: String(i) }), el('span', {}, `${i + 1}. ${c}`)));
    const words = el('input', { id: own, type: 'text', maxLength: 300, autocomplete: 'off' });
    const form = el('form', { onsubmit: event => {
      event.preventDefault();
      const picked = form.querySelector(`input[name="${group}"]:checked`);
      const typed = words.value.trim();
      if (typed === '' && !picked) {
        result.replaceChildren(el('p', { className: 'fault' }, say('ui.training.unread.number')));
        return;
      }
      answered(typed === '' ? { choice: Number(picked.value) } : { answer: typed }, item, result, form.querySelector('button')).catch(complain(result));
    } },
    el('fieldset', { className: 'asked-now' }, el('legend', { tabIndex: -1 }, `${say('ui.training.console.question', marks.length + 1, round.items.length)} ${item.ask}`), radios,
      item.words && el('p', { className: 'own' }, el('label', { htmlFor: own }, say('ui.training.own')), words)),
    el('div', { className: 'tools' }, el('button', { type: 'submit' }, say('ui.training.answer')),
      el('button', { type: 'button', className: 'quiet', onclick: () => result.replaceChildren(el('p', { className: 'hint' }, ruleWords('span', item.hint))) }, say('ui.training.hint')),
      el('button', { type: 'button', className: 'quiet', onclick: event => answered({ answer: '' }, item, result, event.target).catch(complain(result)) }, say('ui.training.skip'))));
    place.replaceChildren(form, result);
    form.querySelector('legend').focus();
  }

  function end() {
    const right = marks.filter(m => m.right).length;
    const mistakes = [...new Set(marks.map(m => m.mistake).filter(m => m))];
    const head = el('h3', { tabIndex: -1 }, say('ui.training.score', right, marks.length));
    place.replaceChildren(head, mistakes.length > 0 && el('p', {}, say('ui.training.mistakes')), el('ul', {}, mistakes.map(m => el('li', {}, m))), el('p', { className: 'closing' }, say('closing')));
    head.focus();
  }

  function show() {
    if (marks.length < round.items.length) question(round.items[marks.length]);
    else end();
  }
  hold();
  show();
}

function complain(where) {
  return fault => {
    if (fault instanceof Problems) where.replaceChildren(...fault.problems.map(p => el('p', { className: 'fault' }, `${p.field} ${p.message}`)));
  };
}

async function paper(kind, spec, out) {
  const bytes = await askBytes('api/training/paper', { ...ordered(spec), kind });
  keep(`${kind}.pdf`, bytes, 'application/pdf');
  out.replaceChildren(el('p', { role: 'status' }, say(`ui.training.saved.${kind}`)));
}

export function drawDrill(root) {
  style();
  const out = el('div', { className: 'training' });
  const topic = el('select', { id: 'round' }, TOPICS.map(t => el('option', { value: t }, say(`ui.training.topic.${t}`))), el('option', { value: 'task' }, say('ui.training.current')));
  const level = el('select', { id: 'level' }, [1, 2, 3].map(n => el('option', { value: n }, say(`ui.training.level.${n}`))));
  const code = el('select', { id: 'round-code' }, state.codes.map(c => el('option', { value: c.id, selected: c.id === state.task.code, lang: has(`code.${c.id}`) ? undefined : 'en' }, codeWords(c))));
  const spec = () => ({ topic: topic.value, difficulty: Number(level.value), code: code.value, seed: Math.floor(Math.random() * 100000) });
  const begin = async (chosen, earlier) => alone(out, chosen, await askJson('api/training/round', ordered(chosen)), earlier);
  const kept = remembered(KEPT);
  const press = act => () => act().catch(complain(out));
  root.replaceChildren(el('p', { className: 'hint' }, say('ui.training.intro')),
    el('div', { className: 'starts starts-in' },
      el('div', {}, el('label', { htmlFor: 'round' }, say('ui.training.topic')), topic),
      el('div', {}, el('label', { htmlFor: 'level' }, say('ui.training.level')), level),
      el('div', {}, el('label', { htmlFor: 'round-code' }, say('ui.training.code')), code)),
    el('div', { className: 'tools' },
      el('button', { type: 'button', id: 'begin-round', onclick: press(() => begin(spec(), [])) }, say('ui.training.begin')),
      el('button', { type: 'button', id: 'begin-room', onclick: press(async () => openRoom(await askJson('api/training/round', { ...ordered(spec()), room: true }))) }, say('ui.training.room')),
      kept?.spec && Array.isArray(kept.marks) && el('button', { type: 'button', id: 'go-on', className: 'quiet', onclick: press(() => begin(kept.spec, kept.marks)) }, say('ui.training.resume', kept.marks.length)),
      el('button', { type: 'button', className: 'quiet', onclick: press(() => paper('handout', spec(), out)) }, say('ui.training.handout')),
      el('button', { type: 'button', className: 'quiet', onclick: press(() => paper('certificate', spec(), out)) }, say('ui.training.certificate'))),
    out);
}
