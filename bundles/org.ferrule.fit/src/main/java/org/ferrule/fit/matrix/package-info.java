/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Matrices of fit questions, solved whole or only where something changed. */
package org.ferrule.fit.matrix;
