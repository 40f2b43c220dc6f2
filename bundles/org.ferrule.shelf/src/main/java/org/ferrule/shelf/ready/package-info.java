/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Whether a shelf has what is needed: for one need, for an ordered list of needs, for several cases that share one
 * shelf. Earlier needs use up what they take; units go first expired first out.
 */
package org.ferrule.shelf.ready;
