"""Heating and cooling equipment: size against load, heat pumps in the cold, airflow, outdoor unit, electricity."""
