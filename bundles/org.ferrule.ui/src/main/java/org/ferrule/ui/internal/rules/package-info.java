/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The editor for rule sets. */
package org.ferrule.ui.internal.rules;
