/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * How verdicts look, defined once for paper, files and screens: each has a word, a shape and a tone of its own, so that
 * none is told by its colour alone. Nothing here is null.
 */
package org.ferrule.chart.look;
