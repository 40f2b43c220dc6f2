/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The kernel, used from outside. */
package org.ferrule.consumer;
