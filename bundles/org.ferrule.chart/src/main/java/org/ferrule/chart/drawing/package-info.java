/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Drawings of devices and of devices in lumens, made from kernel records: longitudinal sections with diameters drawn
 * larger than lengths, which their captions say, and cross-sections to scale. What is not known is drawn broken and
 * named. Nothing here is null.
 */
package org.ferrule.chart.drawing;
