/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * A plan on one page of paper. Where not everything has room, it is shortened in a stated order, and the page says so.
 */
package org.ferrule.plansheet.page;
