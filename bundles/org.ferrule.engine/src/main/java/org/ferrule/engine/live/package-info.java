/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Charts that follow their documents while these are edited. */
package org.ferrule.engine.live;
