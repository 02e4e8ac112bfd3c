/** Advice: what the rules concluded about a task, ordered for people. */
package org.fumewarden.advice;
