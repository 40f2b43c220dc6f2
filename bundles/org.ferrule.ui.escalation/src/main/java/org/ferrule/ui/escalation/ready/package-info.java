/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The view that tells for which cases of a project which techniques are ready. */
package org.ferrule.ui.escalation.ready;
