/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cutter</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The part that removes or cuts plaque.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Cutter#getSection <em>Section</em>}</li>
 *   <li>{@link org.ferrule.model.Cutter#getType <em>Type</em>}</li>
 *   <li>{@link org.ferrule.model.Cutter#getDiameter <em>Diameter</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getCutter()
 * @model
 * @generated
 */
public interface Cutter extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of the shaft section where it sits.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Section</em>' attribute.
	 * @see #setSection(String)
	 * @see org.ferrule.model.ModelPackage#getCutter_Section()
	 * @model annotation="https://ferrule.invalid/annotation/1 refers='ShaftSection' label='Sits at section'"
	 * @generated
	 */
	String getSection();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Cutter#getSection <em>Section</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Section</em>' attribute.
	 * @see #getSection()
	 * @generated
	 */
	void setSection(String value);

	/**
	 * Returns the value of the '<em><b>Type</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.CutterType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What sort of cutter it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Type</em>' attribute.
	 * @see org.ferrule.model.CutterType
	 * @see #isSetType()
	 * @see #unsetType()
	 * @see #setType(CutterType)
	 * @see org.ferrule.model.ModelPackage#getCutter_Type()
	 * @model unsettable="true" required="true"
	 * @generated
	 */
	CutterType getType();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Cutter#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Type</em>' attribute.
	 * @see org.ferrule.model.CutterType
	 * @see #isSetType()
	 * @see #unsetType()
	 * @see #getType()
	 * @generated
	 */
	void setType(CutterType value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Cutter#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetType()
	 * @see #getType()
	 * @see #setType(CutterType)
	 * @generated
	 */
	void unsetType();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Cutter#getType <em>Type</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Type</em>' attribute is set.
	 * @see #unsetType()
	 * @see #getType()
	 * @see #setType(CutterType)
	 * @generated
	 */
	boolean isSetType();

	/**
	 * Returns the value of the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The diameter of the cutter (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diameter</em>' attribute.
	 * @see #setDiameter(Dimension)
	 * @see org.ferrule.model.ModelPackage#getCutter_Diameter()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='OUTER_DIAMETER'"
	 * @generated
	 */
	Dimension getDiameter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Cutter#getDiameter <em>Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diameter</em>' attribute.
	 * @see #getDiameter()
	 * @generated
	 */
	void setDiameter(Dimension value);

} // Cutter
