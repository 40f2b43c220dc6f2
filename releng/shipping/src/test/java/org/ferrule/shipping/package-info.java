/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Tests over small bundles made on the spot. */
package org.ferrule.shipping;
