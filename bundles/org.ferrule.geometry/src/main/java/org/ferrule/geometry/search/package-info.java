/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * The search for small circles round bodies that are free to move and to turn, in doubles and in any unit of length.
 * It proves nothing: the package above turns what it finds into proved bounds. Not part of the bundle's interface.
 * Functions are those of {@link StrictMath}, so that the search goes the same way on every machine.
 */
package org.ferrule.geometry.search;
