/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Fit charts as comma-separated values (RFC 4180, UTF-8), for spreadsheets and other programs. */
package org.ferrule.io.csv;
