/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import org.ferrule.fit.verdict.Verdict;

/**
 * Where a verdict changes while a section grows, to a third of a nanometre.
 *
 * @param below the verdict up to {@code last}
 * @param above the verdict from {@code first} on
 * @param last the largest size with the verdict {@code below}
 * @param first the next size, a third of a nanometre larger
 */
public record Flip(Verdict below, Verdict above, Size last, Size first) {
}
