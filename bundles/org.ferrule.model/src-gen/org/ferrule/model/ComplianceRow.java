/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Pressure;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Compliance Row</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One row of a compliance table.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.ComplianceRow#getPressure <em>Pressure</em>}</li>
 *   <li>{@link org.ferrule.model.ComplianceRow#getDiameter <em>Diameter</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getComplianceRow()
 * @model
 * @generated
 */
public interface ComplianceRow extends Element
{
	/**
	 * Returns the value of the '<em><b>Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The pressure (atm, bar, kPa, MPa, psi or mmHg).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pressure</em>' attribute.
	 * @see #setPressure(Pressure)
	 * @see org.ferrule.model.ModelPackage#getComplianceRow_Pressure()
	 * @model dataType="org.ferrule.model.Pressure" required="true"
	 * @generated
	 */
	Pressure getPressure();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ComplianceRow#getPressure <em>Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pressure</em>' attribute.
	 * @see #getPressure()
	 * @generated
	 */
	void setPressure(Pressure value);

	/**
	 * Returns the value of the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The diameter at that pressure (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diameter</em>' attribute.
	 * @see #setDiameter(Dimension)
	 * @see org.ferrule.model.ModelPackage#getComplianceRow_Diameter()
	 * @model dataType="org.ferrule.model.Dimension" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='BALLOON_DIAMETER'"
	 * @generated
	 */
	Dimension getDiameter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ComplianceRow#getDiameter <em>Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diameter</em>' attribute.
	 * @see #getDiameter()
	 * @generated
	 */
	void setDiameter(Dimension value);

} // ComplianceRow
