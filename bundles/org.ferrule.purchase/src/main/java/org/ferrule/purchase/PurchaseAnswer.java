/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

/** The answer to a problem: a purchase, or why there is none, or that it could not be found out. */
public sealed interface PurchaseAnswer permits Purchase, Uncoverable, Undecided {
}
