/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Offset;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Disc</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One disc of a rigid set, placed in the cross-section.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Disc#getX <em>X</em>}</li>
 *   <li>{@link org.ferrule.model.Disc#getY <em>Y</em>}</li>
 *   <li>{@link org.ferrule.model.Disc#getDiameter <em>Diameter</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getDisc()
 * @model
 * @generated
 */
public interface Disc extends Element
{
	/**
	 * Returns the value of the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The centre's offset across the section; may be negative (mm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>X</em>' attribute.
	 * @see #setX(Offset)
	 * @see org.ferrule.model.ModelPackage#getDisc_X()
	 * @model dataType="org.ferrule.model.Offset" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Offset across'"
	 * @generated
	 */
	Offset getX();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Disc#getX <em>X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>X</em>' attribute.
	 * @see #getX()
	 * @generated
	 */
	void setX(Offset value);

	/**
	 * Returns the value of the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The centre's offset up the section; may be negative (mm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Y</em>' attribute.
	 * @see #setY(Offset)
	 * @see org.ferrule.model.ModelPackage#getDisc_Y()
	 * @model dataType="org.ferrule.model.Offset" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Offset up'"
	 * @generated
	 */
	Offset getY();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Disc#getY <em>Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Y</em>' attribute.
	 * @see #getY()
	 * @generated
	 */
	void setY(Offset value);

	/**
	 * Returns the value of the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The diameter of the disc (mm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diameter</em>' attribute.
	 * @see #setDiameter(Dimension)
	 * @see org.ferrule.model.ModelPackage#getDisc_Diameter()
	 * @model dataType="org.ferrule.model.Dimension" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='OUTER_DIAMETER'"
	 * @generated
	 */
	Dimension getDiameter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Disc#getDiameter <em>Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diameter</em>' attribute.
	 * @see #getDiameter()
	 * @generated
	 */
	void setDiameter(Dimension value);

} // Disc
