/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What a check has to show beside its verdict: the figures of a picture. Nothing here decides anything. Doubles are in
 * the unit that their name tells and stand for what is drawn or said, never for what a verdict rests on.
 */
package org.ferrule.fit.evidence;
