/** What the tables of a code order, and how it judges what is logged: fit tests, breathing air, examinations. */
package org.fumewarden.duties;
