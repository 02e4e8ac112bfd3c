// A name for a task that was given none: what is done, on what, where.

import { answerWords, at, change, question, state } from './state.js';

const NAMED = ['process', 'base-metal', 'coating', 'place'];
let made = '';

export function titleOf() {
  if (state.task.title && state.task.title !== made) return;
  const words = NAMED.map(question).filter(Boolean).map(q => [q, at(state.task, q.path)]).filter(([q, v]) => v && v !== 'unknown' && q.choices.some(c => c.id === v))
    .map(([q, v]) => answerWords(q, v));
  if (words.length === 0) return;
  made = words.join(', ').slice(0, 180);
  if (made !== state.task.title) change('title', made);
}
