/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The next size of a line: counted up from its neighbours where their step is evident, and shown before it is made. */
package org.ferrule.ui.devices.next;
