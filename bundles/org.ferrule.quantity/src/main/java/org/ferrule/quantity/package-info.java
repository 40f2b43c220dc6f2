/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Lengths, diameters and pressures as printed on labels: exact values that keep their text, know their unit and what
 * they mean (minimum, nominal, maximum, measured), and say where a text goes wrong. All types are immutable; no
 * parameter or result is null unless a comment says so; nothing depends on the default locale.
 */
package org.ferrule.quantity;
