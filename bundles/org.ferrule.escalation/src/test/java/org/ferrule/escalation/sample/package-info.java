/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Invented devices, techniques and cases for tests. */
package org.ferrule.escalation.sample;
