/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

/** Whose rules a code follows. */
public enum Scheme {
    /** GS1: element strings, and GTINs by themselves. */
    GS1,
    /** Supplier labelling standard of the Health Industry Business Communications Council. */
    HIBC
}
