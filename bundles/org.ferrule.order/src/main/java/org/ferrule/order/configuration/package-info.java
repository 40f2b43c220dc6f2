/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Orders of tries where the system can be changed back and forth between configurations, at a cost for each change. Each
 * option is tried once at most, in one of the configurations that it is possible in. Tries of different options are taken
 * as independent. No parameter or result is null.
 */
package org.ferrule.order.configuration;
