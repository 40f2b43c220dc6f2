/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The page on which a case is stated. */
package org.ferrule.ui.escalation.form;
