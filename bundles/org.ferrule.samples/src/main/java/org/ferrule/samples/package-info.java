/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Documents of any size, made for the tests of several bundles; no part of the product. */
package org.ferrule.samples;
