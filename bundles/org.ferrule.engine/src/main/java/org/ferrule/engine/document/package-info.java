/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Documents as they are stored. */
package org.ferrule.engine.document;
