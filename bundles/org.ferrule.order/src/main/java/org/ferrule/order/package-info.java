/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * In which order to take steps of which each may end the search: set-ups, and tries of options. The order of least expected
 * cost is found, with the cost of stopping where all planned tries fail; what is not worth it is left out, and the empty
 * plan is one. Tries of different options are taken as independent, which is an assumption.
 * <p>
 * Where tiers come first, the best plan of a tier is, from each state: if the best plan of the tiers below is not empty
 * there, that one, as if there were no higher tier, and then this rule again where it ends; otherwise the least of stopping,
 * and of any allowed step of the tier or a lower one with the best plan of the tier after it. So a lower tier is possible
 * where an order of its steps, with what they need of lower tiers, costs less per chance than stopping; steps of a higher
 * tier wait for that.
 * <p>
 * An option that is after another waits for one failed try of it. Between two tries at most one new risk is brought in, if
 * that is asked for: after a risky set-up a try that is not the first of a risky option comes before the next risk.
 * <p>
 * The file docs/ordering.md has the method and the proofs. Problems that make no sense are refused with their values. No
 * parameter or result is null, and nothing changes once it is made.
 */
package org.ferrule.order;
