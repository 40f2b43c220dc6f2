/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * In which order to take steps of which each may end the search: set-ups, and tries of options. No parameter or result
 * is null.
 */
package org.ferrule.order;
