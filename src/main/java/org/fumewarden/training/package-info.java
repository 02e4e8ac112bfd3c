/** The training room: questions made from the rule base, marked by their meaning, with the mistake behind each wrong answer. */
package org.fumewarden.training;
