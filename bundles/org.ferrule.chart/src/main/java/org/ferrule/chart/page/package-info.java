/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Fit charts as pages: what a page shows, how it is laid out, and the pictures of it. Every page carries the cautions,
 * the rule set, the revision and the date. Nothing here is null.
 */
package org.ferrule.chart.page;
