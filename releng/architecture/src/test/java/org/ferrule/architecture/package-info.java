/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What may depend on what: the layers, read off the compiled bundles. */
package org.ferrule.architecture;
