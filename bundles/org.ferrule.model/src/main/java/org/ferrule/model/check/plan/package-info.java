/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Rules for the content of techniques, cases and shelves. */
package org.ferrule.model.check.plan;
