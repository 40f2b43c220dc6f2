/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Ways to get a device across: techniques, the set-ups that they need, the roles that devices play in them.
 */
package org.ferrule.escalation.technique;
