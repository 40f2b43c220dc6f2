/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Device</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One orderable size.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Device#getLine <em>Line</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getDevice()
 * @model
 * @generated
 */
public interface Device extends DeviceParts
{
	/**
	 * Returns the value of the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the line that it belongs to, in the same document.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Line</em>' attribute.
	 * @see #setLine(String)
	 * @see org.ferrule.model.ModelPackage#getDevice_Line()
	 * @model annotation="https://ferrule.invalid/annotation/1 refers='DeviceLine' position='after id'"
	 * @generated
	 */
	String getLine();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Device#getLine <em>Line</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Line</em>' attribute.
	 * @see #getLine()
	 * @generated
	 */
	void setLine(String value);

} // Device
