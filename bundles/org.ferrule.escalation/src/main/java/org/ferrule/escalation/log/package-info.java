/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * What is kept of a case that is over.
 */
package org.ferrule.escalation.log;
