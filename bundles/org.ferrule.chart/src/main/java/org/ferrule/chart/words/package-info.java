/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Plain words for verdicts, reasons and lengths, made from templates that can be translated. No clearance is rounded in
 * the optimistic direction, no device is written thinner and no lumen wider than it is. Nothing here is null.
 */
package org.ferrule.chart.words;
