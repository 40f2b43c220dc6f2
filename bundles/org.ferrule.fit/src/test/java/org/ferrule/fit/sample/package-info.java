/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Devices, rule sets and questions for tests, written in a few words. A dimension is a text as printed; {@code "?"}
 * stands for one that nobody states.
 */
package org.ferrule.fit.sample;
