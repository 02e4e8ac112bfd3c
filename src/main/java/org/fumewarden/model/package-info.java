/**
 * Facts and conclusions: the words that rules read and write. Nothing here computes policy.
 *
 * <p>The words of the trade behind the names; docs/glossary.md has their documents.
 *
 * <ul>
 *   <li>{@link org.fumewarden.model.Hazard}: an agent that the task puts into the air, by an {@link
 *       org.fumewarden.model.Emitter}
 *   <li>{@link org.fumewarden.model.Exposure}, {@link org.fumewarden.model.Limit}: the concentration outside the respirator,
 *       and the exposure limit (WEL, PEL, AGW)
 *   <li>{@link org.fumewarden.model.Ratio}: the hazard ratio, exposure over limit
 *   <li>{@link org.fumewarden.model.Need}: a required protection factor; the highest is the minimum required protection
 *       factor
 *   <li>{@link org.fumewarden.model.AssignedFactor}: the assigned protection factor (APF) of a class; {@link
 *       org.fumewarden.model.FactorInForce}: the one that counts for this task
 *   <li>{@link org.fumewarden.model.DangerLevel}: the level immediately dangerous to life or health (IDLH)
 *   <li>{@link org.fumewarden.model.Gate}, {@link org.fumewarden.model.Stop}: air that closes the way to respirators, and a
 *       reason not to enter or not to start
 *   <li>{@link org.fumewarden.model.Account}: how a hazard is settled for one averaging time
 *   <li>{@link org.fumewarden.model.Bar}, {@link org.fumewarden.model.Doubt}, {@link org.fumewarden.model.Offer}: a class of
 *       respirator that is excluded, that waits for an answer, and that nothing excludes
 *   <li>{@link org.fumewarden.model.Demand}, {@link org.fumewarden.model.Holding}: what the filter has to hold of one agent,
 *       and of all
 *   <li>{@link org.fumewarden.model.Duty}, {@link org.fumewarden.model.Owed}: a check, test or record that a code orders, and
 *       one that this task brings with it
 * </ul>
 */
package org.fumewarden.model;
