/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Bend</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A bend on the way.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Bend#getWhere <em>Where</em>}</li>
 *   <li>{@link org.ferrule.model.Bend#getRadius <em>Radius</em>}</li>
 *   <li>{@link org.ferrule.model.Bend#getAngleDegrees <em>Angle Degrees</em>}</li>
 *   <li>{@link org.ferrule.model.Bend#getVesselDiameter <em>Vessel Diameter</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getBend()
 * @model
 * @generated
 */
public interface Bend extends Element
{
	/**
	 * Returns the value of the '<em><b>Where</b></em>' attribute.
	 * The default value is <code>"lumen"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.BendPlace}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is bent: the lumen that the device passes, which does not yield, or a vessel beyond it, which does.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Where</em>' attribute.
	 * @see org.ferrule.model.BendPlace
	 * @see #isSetWhere()
	 * @see #unsetWhere()
	 * @see #setWhere(BendPlace)
	 * @see org.ferrule.model.ModelPackage#getBend_Where()
	 * @model default="lumen" unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='What is bent'"
	 * @generated
	 */
	BendPlace getWhere();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Bend#getWhere <em>Where</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Where</em>' attribute.
	 * @see org.ferrule.model.BendPlace
	 * @see #isSetWhere()
	 * @see #unsetWhere()
	 * @see #getWhere()
	 * @generated
	 */
	void setWhere(BendPlace value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Bend#getWhere <em>Where</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetWhere()
	 * @see #getWhere()
	 * @see #setWhere(BendPlace)
	 * @generated
	 */
	void unsetWhere();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Bend#getWhere <em>Where</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Where</em>' attribute is set.
	 * @see #unsetWhere()
	 * @see #getWhere()
	 * @see #setWhere(BendPlace)
	 * @generated
	 */
	boolean isSetWhere();

	/**
	 * Returns the value of the '<em><b>Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The radius of its centre line (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Radius</em>' attribute.
	 * @see #setRadius(Dimension)
	 * @see org.ferrule.model.ModelPackage#getBend_Radius()
	 * @model dataType="org.ferrule.model.Dimension" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='RADIUS'"
	 * @generated
	 */
	Dimension getRadius();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Bend#getRadius <em>Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Radius</em>' attribute.
	 * @see #getRadius()
	 * @generated
	 */
	void setRadius(Dimension value);

	/**
	 * Returns the value of the '<em><b>Angle Degrees</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far it turns, in degrees; when not given, it is taken to be longer than whatever passes it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Angle Degrees</em>' attribute.
	 * @see #setAngleDegrees(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getBend_AngleDegrees()
	 * @model annotation="https://ferrule.invalid/annotation/1 above='0' most='360' label='Angle (degrees)'"
	 * @generated
	 */
	BigDecimal getAngleDegrees();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Bend#getAngleDegrees <em>Angle Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Angle Degrees</em>' attribute.
	 * @see #getAngleDegrees()
	 * @generated
	 */
	void setAngleDegrees(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Vessel Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The lumen diameter of the vessel that is bent (mm); only then can be told to what radius it must straighten. Not of a lumen, whose diameter is that of its device.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Vessel Diameter</em>' attribute.
	 * @see #setVesselDiameter(Dimension)
	 * @see org.ferrule.model.ModelPackage#getBend_VesselDiameter()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='VESSEL_DIAMETER'"
	 * @generated
	 */
	Dimension getVesselDiameter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Bend#getVesselDiameter <em>Vessel Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vessel Diameter</em>' attribute.
	 * @see #getVesselDiameter()
	 * @generated
	 */
	void setVesselDiameter(Dimension value);

} // Bend
