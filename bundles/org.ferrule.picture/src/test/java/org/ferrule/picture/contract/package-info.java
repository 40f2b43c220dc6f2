/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** What every writer of pictures must keep to, for the tests of the writers. */
package org.ferrule.picture.contract;
