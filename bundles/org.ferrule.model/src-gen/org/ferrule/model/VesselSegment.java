/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Vessel Segment</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stretch of a vessel.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.VesselSegment#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.VesselSegment#getLength <em>Length</em>}</li>
 *   <li>{@link org.ferrule.model.VesselSegment#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link org.ferrule.model.VesselSegment#getBendRadius <em>Bend Radius</em>}</li>
 *   <li>{@link org.ferrule.model.VesselSegment#getBendAngleDegrees <em>Bend Angle Degrees</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getVesselSegment()
 * @model
 * @generated
 */
public interface VesselSegment extends Element
{
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of the segment.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.ferrule.model.ModelPackage#getVesselSegment_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.ferrule.model.VesselSegment#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its length along the centre line (mm or cm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Dimension)
	 * @see org.ferrule.model.ModelPackage#getVesselSegment_Length()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='LENGTH'"
	 * @generated
	 */
	Dimension getLength();

	/**
	 * Sets the value of the '{@link org.ferrule.model.VesselSegment#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Dimension value);

	/**
	 * Returns the value of the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its lumen diameter (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diameter</em>' attribute.
	 * @see #setDiameter(Dimension)
	 * @see org.ferrule.model.ModelPackage#getVesselSegment_Diameter()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='VESSEL_DIAMETER'"
	 * @generated
	 */
	Dimension getDiameter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.VesselSegment#getDiameter <em>Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diameter</em>' attribute.
	 * @see #getDiameter()
	 * @generated
	 */
	void setDiameter(Dimension value);

	/**
	 * Returns the value of the '<em><b>Bend Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The radius of its bend, along the centre line (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bend Radius</em>' attribute.
	 * @see #setBendRadius(Dimension)
	 * @see org.ferrule.model.ModelPackage#getVesselSegment_BendRadius()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='RADIUS'"
	 * @generated
	 */
	Dimension getBendRadius();

	/**
	 * Sets the value of the '{@link org.ferrule.model.VesselSegment#getBendRadius <em>Bend Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bend Radius</em>' attribute.
	 * @see #getBendRadius()
	 * @generated
	 */
	void setBendRadius(Dimension value);

	/**
	 * Returns the value of the '<em><b>Bend Angle Degrees</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The angle of its bend, in degrees.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bend Angle Degrees</em>' attribute.
	 * @see #setBendAngleDegrees(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getVesselSegment_BendAngleDegrees()
	 * @model annotation="https://ferrule.invalid/annotation/1 least='0' most='360' label='Bend angle (degrees)'"
	 * @generated
	 */
	BigDecimal getBendAngleDegrees();

	/**
	 * Sets the value of the '{@link org.ferrule.model.VesselSegment#getBendAngleDegrees <em>Bend Angle Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bend Angle Degrees</em>' attribute.
	 * @see #getBendAngleDegrees()
	 * @generated
	 */
	void setBendAngleDegrees(BigDecimal value);

} // VesselSegment
