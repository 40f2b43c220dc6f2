/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Where a case stands: the system in place, the target, what was tried and used up.
 */
package org.ferrule.escalation.state;
