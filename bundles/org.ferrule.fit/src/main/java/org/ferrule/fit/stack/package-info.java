/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Devices that lie in each other: a stack's levels are asked one by one against the level that holds them, and the
 * outermost is compared with the vessel of the access.
 */
package org.ferrule.fit.stack;
