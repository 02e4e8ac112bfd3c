// Talks to the local server. A slow or dead server is said to the reader; nothing typed is lost, since it is kept here.

import { el } from './dom.js';
import { has, say } from './words.js';

const SLOW = 2500;
const LONGEST = 45000;
const line = el('p', { className: 'notice', role: 'status' });
let waiting = 0;
let down = false;

export function notice() {
  return line;
}

/** Says a sentence of the bundle; before the bundle is here there is nothing to say it with. */
function speak(key, serious) {
  show(has(key) ? say(key) : '', serious);
}

function show(text, serious) {
  line.textContent = text;
  line.classList.toggle('serious', Boolean(serious));
}

/** Wrong input: everything the server found, field by field. */
export class Problems extends Error {
  constructor(problems) {
    super(problems.map(p => `${p.field} ${p.message}`).join(' '));
    this.problems = problems;
  }
}

/** The server did not answer. */
export class Silent extends Error {}

async function fetchOnce(path, body, signal) {
  try {
    const reply = await fetch(path, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(body ?? {}),
      signal,
    });
    return { status: reply.status, type: reply.headers.get('Content-Type') ?? '', bytes: await reply.arrayBuffer() };
  } catch (fault) {
    throw new Silent(String(fault));
  }
}

/** Asks the server; gives its bytes. */
async function ask(path, body, quiet) {
  const stop = new AbortController();
  const patience = setTimeout(() => stop.abort(), LONGEST);
  const slow = quiet ? 0 : setTimeout(() => { if (!down) speak('ui.server.slow'); }, SLOW);
  waiting += quiet ? 0 : 1;
  try {
    const reply = await fetchOnce(path, body, stop.signal);
    if (down && reply.status !== 403) {
      speak('ui.server.back');
      down = false;
    }
    if (reply.status === 403) {
      down = true;
      speak('ui.server.gone', true);
      throw new Silent('new link');
    }
    if (reply.status !== 200) {
      const told = JSON.parse(new TextDecoder().decode(reply.bytes));
      throw new Problems(told.problems ?? []);
    }
    return reply.bytes;
  } catch (fault) {
    if (fault instanceof Silent && fault.message !== 'new link') {
      down = true;
      speak('ui.server.down', true);
    }
    throw fault;
  } finally {
    waiting -= quiet ? 0 : 1;
    clearTimeout(patience);
    clearTimeout(slow);
    if (!down && waiting === 0 && line.textContent === say('ui.server.slow')) show('');
  }
}

export async function askText(path, body, quiet) {
  return new TextDecoder().decode(await ask(path, body, quiet));
}

export async function askJson(path, body, quiet) {
  return JSON.parse(await askText(path, body, quiet));
}

export const askBytes = ask;

/** Says something in passing. */
export function tell(text, serious) {
  show(text, serious);
}
