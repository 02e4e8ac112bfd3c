// Puts the page together: words, codes, the task kept from an earlier visit, and a fresh decision after each change.

import { askJson, askText, notice, Problems, Silent, tell } from './server.js';
import { el } from './dom.js';
import { emit, on, remember, remembered, state } from './state.js';
import { has, languages, say, use } from './words.js';
import { answerBox, drawAnswer, markAnswer } from './answer.js';
import { drawDescribe, refresh } from './describe.js';
import { drawAdvice } from './advice.js';
import { drawWhatIf } from './whatif.js';
import { drawTrail } from './trail.js';
import { opened } from './open.js';
import { drawUpkeep } from './upkeep.js';
import { drawDrill } from './drill.js';
import { firstTask, keepTasks } from './tasks.js';
import { undoLine } from './undo.js';

const PLACES = { describe: drawDescribe, advice: drawAdvice, try: drawWhatIf, trail: drawTrail, upkeep: drawUpkeep, drill: drawDrill };
/** Places that keep what is typed in them: they are drawn once and stay. */
const STAY = ['describe', 'drill'];
const AGAIN = 4000;
/** When it takes longer than this, in milliseconds, it is said over the whole page too. */
const LATE = 1500;
const PAGE = String(Math.random());
const views = {};
let aside;
let typing = 0;
let running = null;
let again = 0;
let late = 0;

function here() {
  const name = location.hash.slice(1).split('=')[0];
  return name in PLACES ? name : 'describe';
}

async function decide() {
  clearTimeout(again);
  const asked = JSON.stringify(state.task);
  running = asked;
  const language = document.documentElement.lang;
  try {
    const [raw, said] = await Promise.all([askText('api/advise', { task: state.task, typing: true }),
      language === 'en' ? null : askJson('api/said', { task: state.task, language }, true).catch(() => null)]);
    if (running !== asked) return;
    state.raw = raw;
    state.advice = opened(JSON.parse(raw), said);
    state.last = state.advice;
    state.problems = [];
    state.stale = false;
    emit('advice');
    relevance(asked);
  } catch (fault) {
    if (running !== asked) return;
    if (fault instanceof Problems) {
      state.problems = fault.problems;
      state.advice = null;
      state.stale = false;
      emit('advice');
    } else if (fault instanceof Silent) {
      again = setTimeout(decide, AGAIN);
    }
  }
}

async function relevance(asked) {
  try {
    const told = await askJson('api/matters', { page: PAGE, task: JSON.parse(asked) }, true);
    if (running === asked) {
      state.matters = told.questions;
      refresh();
    }
  } catch { /* every question stays as it was */ }
}

async function vocabulary() {
  state.vocabulary = await askJson('api/vocabulary', { code: state.task.code, on: state.task.on, language: document.documentElement.lang });
}

/** An answer that is older than the task says so, in words and at once: nobody may act on it. */
function markStale() {
  const old = state.stale && state.advice !== null;
  const line = document.getElementById('stale');
  clearTimeout(late);
  if (!old) line.textContent = '';
  else if (line.textContent === '') late = setTimeout(() => { line.textContent = say('ui.stale'); }, LATE);
  markAnswer(old ? say('ui.deciding') : '');
  document.body.classList.toggle('is-stale', state.stale);
}

function show(focus) {
  for (const [name, view] of Object.entries(views)) {
    view.section.hidden = name !== here();
    view.link.setAttribute('aria-current', name === here() ? 'page' : 'false');
  }
  document.body.dataset.place = here();
  aside.hidden = here() !== 'describe';
  document.title = `${say(`place.${here()}`)} - Fumewarden`;
  markStale();
  const view = views[here()];
  if (!STAY.includes(here()) || !view.drawn) PLACES[here()](view.body);
  view.drawn = true;
  if (focus) view.head.focus();
}

function language() {
  return el('select', { id: 'language', onchange: async event => {
    remember('language', event.target.value);
    await build();
    decide();
    document.getElementById('language').focus();
  } }, languages.map(tag => el('option', { value: tag, lang: tag, selected: tag === document.documentElement.lang }, say(`language.${tag}`))));
}

function theme() {
  const kept = remembered('theme') ?? 'system';
  document.documentElement.dataset.theme = kept;
  return el('select', { id: 'theme', onchange: event => {
    remember('theme', event.target.value);
    document.documentElement.dataset.theme = event.target.value;
  } }, ['system', 'light', 'dark'].map(t => el('option', { value: t, selected: t === kept }, say(`theme.${t}`))));
}

function frame() {
  const sections = [];
  const links = [];
  for (const name of Object.keys(PLACES)) {
    const head = el('h2', { tabIndex: -1 }, say(`place.${name}`));
    const body = el('div', {});
    const link = el('a', { href: `#${name}` }, say(`place.${name}`));
    const section = el('section', { id: name, className: 'place', 'aria-label': say(`place.${name}`), hidden: true }, head, body);
    views[name] = { head, body, link, section };
    sections.push(section);
    links.push(el('li', {}, link));
  }
  aside = answerBox();
  document.getElementById('page').replaceChildren(
    el('a', { className: 'skip', href: `#${here()}`, onclick: e => { e.preventDefault(); views[here()].head.focus(); } }, say('ui.skip')),
    el('header', {}, el('div', { className: 'brand' }, el('img', { src: 'mark.svg', alt: '', width: 34, height: 34 }), el('h1', {}, 'Fumewarden'),
      el('p', {}, say('ui.claim'))), el('nav', { 'aria-label': say('ui.places') }, el('ul', {}, links))),
    notice(), undoLine(),
    el('p', { id: 'stale', className: 'stale', role: 'status' }),
    el('main', {}, sections, aside),
    el('footer', {}, el('p', { className: 'closing' }, say('closing')), el('p', { className: 'choices' },
      el('label', { htmlFor: 'language' }, say('ui.language')), language(), el('label', { htmlFor: 'theme' }, say('ui.theme')), theme())));
}

async function build() {
  use(await askJson('api/words', { language: remembered('language') ?? navigator.language }));
  await vocabulary();
  frame();
  drawDescribe(views.describe.body);
  views.describe.drawn = true;
  drawAnswer();
  show(false);
}

async function start() {
  const codes = await askJson('api/codes', {});
  Object.assign(state, { codes: codes.codes, today: codes.today, starts: (await askJson('api/starts', {})).starts, pin: remembered('pin') });
  state.task = firstTask();
  await build();
  keepTasks();
  window.addEventListener('hashchange', () => show(true));
  on('task', () => {
    markStale();
    clearTimeout(typing);
    typing = setTimeout(async () => {
      const stale = state.task.code !== state.vocabulary.code && state.codes.some(c => c.id === state.task.code);
      if (stale) {
        await vocabulary().catch(() => {});
        drawDescribe(views.describe.body);
        document.getElementById('code')?.focus();
      }
      decide();
    }, 300);
  });
  on('replaced', () => {
    drawDescribe(views.describe.body);
    if (here() === 'try') show(false);
  });
  on('advice', () => {
    drawAnswer();
    refresh();
    if (['advice', 'trail', 'try'].includes(here())) show(false);
    else markStale();
  });
  decide();
}

start().catch(fault => {
  document.getElementById('page').replaceChildren(el('p', { className: 'notice serious', role: 'alert' },
    has('ui.server.gone') ? say('ui.server.gone') : 'The server does not answer. Start it with "fumewarden serve" and open the link that it prints. Nothing typed is lost.'), notice());
  tell(String(fault.message ?? fault), true);
});
