/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Oval</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stadium: a rectangle with a half circle at each short end.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Oval#getWidth <em>Width</em>}</li>
 *   <li>{@link org.ferrule.model.Oval#getHeight <em>Height</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getOval()
 * @model
 * @generated
 */
public interface Oval extends Element
{
	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The longer outer diameter (mm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Dimension)
	 * @see org.ferrule.model.ModelPackage#getOval_Width()
	 * @model dataType="org.ferrule.model.Dimension" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='OUTER_DIAMETER'"
	 * @generated
	 */
	Dimension getWidth();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Oval#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Dimension value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The shorter outer diameter (mm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Dimension)
	 * @see org.ferrule.model.ModelPackage#getOval_Height()
	 * @model dataType="org.ferrule.model.Dimension" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='OUTER_DIAMETER'"
	 * @generated
	 */
	Dimension getHeight();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Oval#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Dimension value);

} // Oval
