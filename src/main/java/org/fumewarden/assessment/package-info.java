/** From samples, stretches of a shift or a room model to the exposures that rules compare with limits. */
package org.fumewarden.assessment;
