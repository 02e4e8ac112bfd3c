/** Proof of what was advised: kept advice, hash chain, signature, replay. */
package org.fumewarden.audit;
