/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Cases, shelves and techniques in a real workbench. */
package org.ferrule.ui.tests.escalation;
