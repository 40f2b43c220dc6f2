/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The record of a closed case, read-only, beside the documents of today. */
package org.ferrule.ui.escalation.record;
