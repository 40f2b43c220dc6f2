/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The editor for technique libraries. */
package org.ferrule.ui.escalation.techniques;
