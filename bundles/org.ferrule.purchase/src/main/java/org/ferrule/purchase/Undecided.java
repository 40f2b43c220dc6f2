/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

/**
 * The solver found no purchase that stands up to the check, and did not show that there is none: it ran out of time or
 * numbers. Nothing may be concluded.
 */
public record Undecided() implements PurchaseAnswer {
}
