/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** An engineer's answers as plots: at which diameter which partner's verdict flips, and which figures decide. */
package org.ferrule.profile.required;
