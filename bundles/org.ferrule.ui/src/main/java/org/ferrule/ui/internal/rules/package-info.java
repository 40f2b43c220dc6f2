/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The editor for rule sets: what they hold on the left, the fields of what is chosen on the right. */
package org.ferrule.ui.internal.rules;
