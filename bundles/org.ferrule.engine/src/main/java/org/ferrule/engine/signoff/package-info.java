/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Signing charts off: what is written down then, and what has changed since. */
package org.ferrule.engine.signoff;
